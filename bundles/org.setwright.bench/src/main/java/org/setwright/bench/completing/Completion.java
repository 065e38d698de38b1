package org.setwright.bench.completing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setwright.bench.facts.FactLine;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.rules.RuleLines;
import org.setwright.bench.words.BenchWord;
import org.setwright.bench.words.Facts;
import org.setwright.bench.words.Facts.Meant;
import org.setwright.bench.words.Named;
import org.setwright.book.Book;
import org.setwright.book.ExpectationText;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;

/** Offers facts, fields, values, settings, rules, jobs and the bench's own words. */
public final class Completion {
	private final AtHand hand;
	private final Catalogue catalogue;
	private final String typed;
	private final List<Offer> offers = new ArrayList<>();

	private Completion(AtHand hand, String typed) {
		this.hand = hand;
		this.typed = typed;
		catalogue = hand.ground().catalogue();
	}

	/**
	 * @param typed what stands before the cursor
	 * @return what could go on there; those that begin with what is typed before those that only hold it
	 */
	public static List<Offer> of(AtHand hand, String typed) {
		if (RuleLines.begins(typed) && typed.indexOf('"') >= 0 || RuleLines.condition(typed, hand.ground().catalogue())) {
			return RuleCompletion.of(hand, typed);
		}
		Completion completion = new Completion(hand, typed);
		completion.line();
		return List.copyOf(completion.offers);
	}

	private void line() {
		int start = typed.length() - typed.stripLeading().length();
		String line = typed.substring(start);
		String lower = line.toLowerCase(Locale.ROOT);
		if (lower.startsWith("expect nothing of ")) {
			settings(start + 18, "");
		} else if (lower.startsWith("expect ")) {
			items(start + 7, lower.substring(7));
			settingValue(start + 7, true);
		} else if (lower.startsWith("why not ")) {
			settingValue(start + 8, false);
			rules(start + 8, hand.rules(), "");
		} else if (lower.startsWith("why ")) {
			settings(start + 4, "");
			rules(start + 4, hand.rules(), "");
		} else if (lower.startsWith("what would give ")) {
			settingValue(start + 16, false);
		} else if (lower.startsWith("what would change ")) {
			settings(start + 18, "");
		} else if (lower.startsWith("what would make ")) {
			rules(start + 16, hand.rules(), " speak");
		} else if (lower.startsWith("drop ")) {
			rules(start + 5, hand.rules(), "");
		} else if (lower.startsWith("job ")) {
			hand.ground().jobs().forEach(j -> job(start + 4, j));
		} else if (lower.startsWith("keep rule ")) {
			keepRule(start, lower);
		} else if (lower.startsWith("keep expectation ")) {
			settings(start + 17, "");
		} else if (lower.startsWith(FactLine.NOT_FITTED + ":")) {
			int from = start + Math.max(line.lastIndexOf(','), line.indexOf(':')) + 1;
			kinds().filter(k -> !k.always()).forEach(k -> offer(blank(from), k.label(), k.meaning(), false));
		} else {
			factOrWord(start, line);
		}
		sort();
	}

	/** Found by its name too. */
	private void job(int from, JobCase job) {
		boolean named = job.name().toLowerCase(Locale.ROOT).contains(typed.substring(from).strip().toLowerCase(Locale.ROOT));
		if (named) {
			offers.add(new Offer(from, Named.shortName(job), job.name(), false));
		} else {
			offer(from, Named.shortName(job), job.name(), false);
		}
	}

	private void factOrWord(int start, String line) {
		int colon = line.indexOf(':');
		if (colon > 0) {
			said(start, line, colon);
			return;
		}
		Optional<Meant> meant = new Facts(catalogue).begun(line).filter(m -> m.field().isEmpty());
		if (meant.isPresent() && meant.get().length() == line.length()) {
			meant.get().kind().fields().forEach(f -> offer(start, line + " " + f.label() + (f.calculation().isPresent() ? "" : ": "), f.meaning(), true));
		} else if (meant.isPresent() && line.charAt(meant.get().length()) == ' ') {
			int from = blank(start + meant.get().length());
			meant.get().kind().fields().forEach(f -> offer(from, f.label() + (f.calculation().isPresent() ? "" : ": "), f.meaning(),
					f.calculation().isEmpty()));
			if (meant.get().kind().many() && meant.get().number() == 0) {
				numbers(meant.get().kind(), from);
			}
		}
		BenchWord.ALL.forEach(w -> offer(start, w.word() + (w.goesOn().isEmpty() ? "" : w.goesOn().startsWith(":") ? ": " : " "), w.meaning(),
				!w.goesOn().isEmpty()));
		int from = start + lastOperand(line);
		catalogue.kinds().forEach(k -> offer(from, k.many() ? k.label() : k.label() + " ", k.meaning(), true));
		catalogue.kinds().stream().filter(FactKind::many).forEach(k -> offer(from, k.key() + ": ", k.meaning(), true));
		settings(from, "");
	}

	private void numbers(FactKind kind, int from) {
		for (int i = 1; i <= hand.job().job().entry(kind).facts().size(); i++) {
			offer(from, i + " ", kind.label() + " " + i, true);
		}
	}

	/** Where the last operand of an expression begins. */
	private static int lastOperand(String line) {
		int last = -1;
		for (String sign : List.of("+ ", "- ", "* ", "/ ", "= ", "< ", "> ", "(")) {
			int at = line.lastIndexOf(sign);
			last = at < 0 ? last : Math.max(last, at + sign.length() - 1);
		}
		int from = last + 1;
		while (from < line.length() && line.charAt(from) == ' ') {
			from++;
		}
		return from;
	}

	private void said(int start, String line, int colon) {
		Optional<Meant> meant = new Facts(catalogue).begun(line.substring(0, colon).strip());
		if (meant.isEmpty()) {
			return;
		}
		FactKind kind = meant.get().kind();
		int from = blank(start + colon + 1);
		if (meant.get().field().isPresent()) {
			values(from, meant.get().field().get().domain());
			offer(from, "unknown", "Nobody has looked it up.", false);
			return;
		}
		int pair = Math.max(Math.max(line.lastIndexOf(','), line.lastIndexOf('{')), Math.max(colon, addEnd(line, colon)));
		String inner = line.substring(pair + 1);
		int valueColon = inner.indexOf(':');
		if (valueColon >= 0) {
			kind.fieldLabelled(inner.substring(0, valueColon)).ifPresent(f -> values(blank(start + pair + 1 + valueColon + 1), f.domain()));
			return;
		}
		asked(kind).forEach(f -> offer(blank(start + pair + 1), f.label() + ": ", f.meaning(), true));
		if (pair == colon) {
			Map<String, String> presence = new TreeMap<>(Map.of("unknown", "Nobody has said whether there is any."));
			if (!kind.always()) {
				presence.put("none", "Somebody made sure that there is none.");
				presence.put("fitted", "There is one, and nothing more is known of it.");
			}
			presence.forEach((word, meaning) -> offer(from, word, meaning, false));
			if (kind.many()) {
				offer(from, FactLine.ADD + " ", "One more " + kind.label() + ".", true);
				offer(from, FactLine.TAKE_OUT + " ", "One is not there; its number follows.", true);
			}
		} else {
			kind.fields().stream().filter(Field::naming).forEach(f -> values(blank(start + pair + 1), f.domain()));
		}
	}

	private static int addEnd(String line, int colon) {
		String rest = line.substring(colon + 1);
		String said = rest.stripLeading();
		return said.toLowerCase(Locale.ROOT).startsWith(FactLine.ADD + " ") ? colon + 1 + rest.length() - said.length() + FactLine.ADD.length() : -1;
	}

	private static Stream<Field> asked(FactKind kind) {
		return kind.fields().stream().filter(f -> f.calculation().isEmpty());
	}

	private Stream<FactKind> kinds() {
		return catalogue.kinds().stream().filter(k -> !k.calculated());
	}

	private void keepRule(int start, String lower) {
		int in = lower.lastIndexOf(" in ");
		if (in >= 0) {
			hand.ground().book().ruleFiles().stream().map(Book.RuleFile::path).forEach(p -> offer(start + in + 4, p, "A file of rules.", false));
		} else {
			rules(start + 10, hand.typed(), " in ");
		}
	}

	private void settingValue(int from, boolean expected) {
		int colon = typed.indexOf(':', from);
		if (colon < 0) {
			settings(from, ": ");
			return;
		}
		catalogue.settingLabelled(typed.substring(from, colon)).ifPresent(setting -> {
			if (expected) {
				ExpectationText.offered(setting).forEach(t -> offer(blank(colon + 1), t, "", false));
			} else {
				values(blank(colon + 1), setting.domain());
			}
		});
	}

	/** What a job can expect besides settings. */
	private void items(int from, String rest) {
		for (ItemList list : ItemList.values()) {
			int after = from + list.one().length() + 1;
			if (!rest.startsWith(list.one() + " ")) {
				offer(from, list.one() + " ", "Expects that it is " + list.state() + ".", true);
			} else if (list.topic() == ItemList.Topic.CAUTIONS) {
				Arrays.stream(CautionKind.values()).forEach(k -> offer(after, k.label() + ": ", k.meaning(), true));
			} else if (list.topic() == ItemList.Topic.START_UP) {
				Arrays.stream(StartUpPhase.values()).forEach(p -> offer(after, p.label() + ": ", p.meaning(), true));
			} else {
				hand.rules().stream().flatMap(r -> r.finds().stream()).distinct().sorted()
						.forEach(f -> offer(after, f.toLowerCase(Locale.ROOT).replace('_', ' '), "Some rule finds it.", false));
			}
		}
	}

	private void settings(int from, String after) {
		for (Setting setting : catalogue.settings()) {
			offer(from, setting.label() + after, setting.meaning(), !after.isEmpty());
		}
	}

	private void rules(int from, List<Rule> rules, String after) {
		rules.forEach(r -> offer(from, Named.of(r) + after, r.because(), !after.isEmpty()));
	}

	private void values(int from, Domain domain) {
		if (domain instanceof Domain.Choices choices) {
			choices.options().forEach(o -> offer(from, o.label(), o.meaning(), false));
		} else {
			domain.listed().forEach(v -> offer(from, v.text(), "", false));
		}
	}

	/** Where the first character after blanks stands, or would. */
	private int blank(int from) {
		int at = from;
		while (at < typed.length() && typed.charAt(at) == ' ') {
			at++;
		}
		return at;
	}

	private void offer(int from, String text, String meaning, boolean goesOn) {
		String begun = from > typed.length() ? "" : typed.substring(from).toLowerCase(Locale.ROOT).replace("\"", "");
		if (text.toLowerCase(Locale.ROOT).contains(begun) && !text.equalsIgnoreCase(begun)) {
			offers.add(new Offer(from, text, meaning, goesOn));
		}
	}

	/** What begins with what is typed comes before what only holds it. */
	private void sort() {
		offers.sort(Comparator.comparing(o -> !o.text().replace("\"", "").toLowerCase(Locale.ROOT)
				.startsWith(typed.substring(Math.min(o.from(), typed.length())).replace("\"", "").toLowerCase(Locale.ROOT))));
	}
}
