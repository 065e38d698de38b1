package org.setwright.writing.uses;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;

/** Finds what the words of one rule stand for, as far as the rule is written. */
final class RuleMentions {
	private static final Pattern SETTING = Pattern.compile("\\{\\s*setting\\s+(\\w+)\\s*\\}");
	private static final Pattern ANSWER = Pattern.compile("\\{\\s*(\\$\\w+)\\s*\\.\\s*(\\w+)\\s*\\}");
	private static final Piece NOTHING = new Piece(Piece.Kind.SIGN, "", 0);
	private final String path;
	private final Catalogue catalogue;
	private final RuleBlock block;
	private final List<Piece> pieces;
	private final List<Mention> found = new ArrayList<>();
	private final Map<String, FactKind> facts = new HashMap<>();
	private final Deque<Optional<FactKind>> open = new ArrayDeque<>();
	private Optional<Field> field = Optional.empty();

	private RuleMentions(String path, RuleBlock block, Catalogue catalogue) {
		this.path = path;
		this.catalogue = catalogue;
		this.block = block;
		pieces = block.pieces().stream().filter(p -> p.kind() != Piece.Kind.COMMENT).toList();
	}

	static List<Mention> of(String path, RuleBlock block, Catalogue catalogue) {
		RuleMentions mentions = new RuleMentions(path, block, catalogue);
		block.name().ifPresent(n -> mentions.add(new Thing.OfRule(n.inside()), n.start() + 1, n.start() + n.text().length() - 1, true));
		block.note("authority").ifPresent(note -> Authority.named(note.inside().replaceAll("^[\\s\"']+|[\\s\"']+$", ""))
				.ifPresent(a -> mentions.authority(a, note)));
		int then = block.then().map(Piece::start).orElse(Integer.MAX_VALUE);
		int when = block.when().map(Piece::end).orElse(Integer.MAX_VALUE);
		for (int i = 0; i < mentions.pieces.size(); i++) {
			int start = mentions.pieces.get(i).start();
			if (start > then) {
				mentions.said(i);
			} else if (start >= when) {
				mentions.asked(i);
			}
		}
		return mentions.found;
	}

	private Piece at(int number) {
		return number >= 0 && number < pieces.size() ? pieces.get(number) : NOTHING;
	}

	private void add(Thing thing, int start, int end, boolean defines) {
		found.add(new Mention(thing, path, start, Math.max(start, end), defines, block.called()));
	}

	private void add(Thing thing, Piece piece, boolean defines) {
		add(thing, piece.start(), piece.end(), defines);
	}

	private Optional<FactKind> kind() {
		return open.stream().flatMap(Optional::stream).findFirst();
	}

	private void authority(Authority authority, RuleBlock.Note note) {
		List<Piece> inside = pieces.stream().filter(p -> p.start() >= note.start() && p.end() <= note.end() && p.kind() != Piece.Kind.SIGN).skip(1).toList();
		add(new Thing.OfAuthority(authority), inside.get(0).start(), inside.get(inside.size() - 1).end(), false);
	}

	private void asked(int i) {
		Piece piece = at(i);
		Optional<FactKind> named = piece.kind() == Piece.Kind.WORD && at(i + 1).is("(") ? catalogue.kind(piece.text()) : Optional.empty();
		if (named.isPresent()) {
			add(new Thing.OfKind(named.get()), piece, false);
			if (at(i - 1).is(":") && at(i - 2).kind() == Piece.Kind.VARIABLE) {
				facts.put(at(i - 2).text(), named.get());
			}
		} else if (piece.is("Finding") && at(i + 3).is("==") && at(i + 4).kind() == Piece.Kind.WORD) {
			add(new Thing.OfFinding(at(i + 4).text()), at(i + 4), false);
		} else if (piece.is("(")) {
			open.push(at(i - 1).kind() == Piece.Kind.WORD ? catalogue.kind(at(i - 1).text()) : Optional.empty());
		} else if (piece.is(")") && !open.isEmpty()) {
			open.pop();
		} else if (piece.kind() == Piece.Kind.WORD) {
			word(piece);
		} else if (piece.kind() == Piece.Kind.QUOTED && !at(i - 1).is("matches")) {
			words(piece);
		}
		ofFact(i);
	}

	/** A field, or one of the answers of the field before it. */
	private void word(Piece piece) {
		Optional<Field> named = kind().flatMap(k -> k.field(piece.text()));
		if (named.isPresent()) {
			field = named;
			add(new Thing.OfField(kind().orElseThrow(), named.get()), piece, false);
		} else {
			field.ifPresent(f -> kind().filter(k -> k.fields().contains(f)).flatMap(k -> choice(new Thing.OfField(k, f), piece))
					.ifPresent(c -> add(c, piece, false)));
		}
	}

	private static Optional<Thing> choice(Thing about, Piece piece) {
		return Values.of(about, piece.text()).filter(t -> !(t instanceof Thing.OfValue));
	}

	private void words(Piece quoted) {
		field.filter(f -> f.domain() instanceof Domain.Words).ifPresent(f -> kind().filter(k -> k.fields().contains(f))
				.ifPresent(k -> add(new Thing.OfValue(k, f, quoted.inside()), quoted.start() + 1, quoted.end() - 1, false)));
	}

	/** {@code $unit.stages} */
	private void ofFact(int i) {
		if (at(i).kind() == Piece.Kind.WORD && at(i - 1).is(".") && facts.containsKey(at(i - 2).text())) {
			FactKind kind = facts.get(at(i - 2).text());
			kind.field(at(i).text()).ifPresent(f -> add(new Thing.OfField(kind, f), at(i), false));
		}
	}

	private void said(int i) {
		Piece piece = at(i);
		if (piece.kind() == Piece.Kind.WORD && at(i - 1).is("(") && at(i - 2).is("find")) {
			add(new Thing.OfFinding(piece.text()), piece, true);
		} else if (piece.kind() == Piece.Kind.WORD && at(i - 1).is("(") && at(i - 2).is("propose")) {
			catalogue.setting(piece.text()).ifPresent(s -> add(new Thing.OfSetting(s), piece, true));
		} else if (piece.kind() == Piece.Kind.WORD && at(i - 1).is(",") && at(i - 4).is("propose")) {
			catalogue.setting(at(i - 2).text()).flatMap(s -> choice(new Thing.OfSetting(s), piece)).ifPresent(c -> add(c, piece, true));
		} else if (piece.kind() == Piece.Kind.QUOTED) {
			readings(piece);
		}
		ofFact(i);
	}

	private void readings(Piece quoted) {
		Matcher setting = SETTING.matcher(quoted.text());
		while (setting.find()) {
			int from = quoted.start() + setting.start(1);
			int to = quoted.start() + setting.end(1);
			catalogue.setting(setting.group(1)).ifPresent(s -> add(new Thing.OfSetting(s), from, to, false));
		}
		Matcher answer = ANSWER.matcher(quoted.text());
		while (answer.find()) {
			FactKind kind = facts.get(answer.group(1));
			int from = quoted.start() + answer.start(2);
			int to = quoted.start() + answer.end(2);
			Optional.ofNullable(kind).flatMap(k -> k.field(answer.group(2))).ifPresent(f -> add(new Thing.OfField(kind, f), from, to, false));
		}
	}
}
