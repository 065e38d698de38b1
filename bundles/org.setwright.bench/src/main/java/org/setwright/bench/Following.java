package org.setwright.bench;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.setwright.bench.asking.About;
import org.setwright.bench.asking.Listing;
import org.setwright.bench.asking.Why;
import org.setwright.bench.changes.Difference;
import org.setwright.bench.facts.FactLine;
import org.setwright.bench.figures.Expression;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.keeping.KeepLines;
import org.setwright.bench.rules.RuleLines;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.BenchWord;
import org.setwright.bench.words.Facts;
import org.setwright.bench.words.Named;
import org.setwright.bench.words.Span;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.book.JobNotWritten;
import org.setwright.book.Misfit;
import org.setwright.book.Problem;
import org.setwright.engine.change.Watch;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Finding;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Finds out what one line wants, and does it. */
final class Following {
	private static final Map<String, Function<Listing, List<Row>>> LISTS = Map.ofEntries(Map.entry("settled", Listing::settled),
			Map.entry("open", Listing::open), Map.entry("unknown", Listing::unknown), Map.entry("cautions", Listing::cautions),
			Map.entry("findings", Listing::findings), Map.entry("start-up", Listing::startUp), Map.entry("facts", Listing::facts),
			Map.entry("calculations", Listing::calculations), Map.entry("rules", Listing::rules), Map.entry("expected", Listing::expected));
	private final Session session;
	private final AtHand hand;
	private final Why why;

	Following(Session session, Watch watch) {
		this.session = session;
		hand = session.hand();
		why = new Why(hand, watch);
	}

	Turn follow(Span typed) throws Misread {
		if (RuleLines.begins(typed.text()) && !typed.text().matches("(?i)rules?")) {
			return rule(typed);
		}
		Span line = typed.text().endsWith("?") ? typed.upTo(typed.text().length() - 1) : typed;
		if (RuleLines.condition(line.text(), hand.ground().catalogue())) {
			return asked(typed, why.conditions(RuleLines.asking(line, hand)));
		}
		Optional<Turn> own = ownWord(line);
		if (own.isPresent()) {
			return own.get();
		}
		Span asking = line.begins("what is ") ? line.after("what is ") : line.begins("what are ") ? line.after("what are ") : line;
		if (LISTS.containsKey(asking.normal())) {
			return asked(typed, LISTS.get(asking.normal()).apply(new Listing(hand)));
		} else if (FactLine.is(line)) {
			return changed(line, new FactLine(hand.ground().catalogue(), hand.job().job()).read(line));
		}
		return asked(typed, answer(asking));
	}

	private Optional<Turn> ownWord(Span line) throws Misread {
		return switch (line.normal()) {
			case "undo" -> Optional.of(session.undo(line));
			case "redo" -> Optional.of(session.redo(line));
			case "leave" -> Optional.of(Turn.wishing(session, new Wish.Leave()));
			case "words" -> Optional.of(Turn.told(session, words()));
			case "lines" -> Optional.of(Turn.told(session, lines()));
			case "no job" -> Optional.of(job(line, Ground.nothing()));
			case "what matters" -> Optional.of(asked(line, why.matters(Optional.empty())));
			case "other jobs" -> Optional.of(otherJobs(line));
			default -> beginning(line);
		};
	}

	private Optional<Turn> beginning(Span line) throws Misread {
		if (line.begins("why not")) {
			return Optional.of(asked(line, whyNot(line.after("why not"))));
		} else if (line.begins("why")) {
			return Optional.of(asked(line, why(line.after("why"))));
		} else if (line.begins("what would give")) {
			SettingValue wanted = settingValue(line.after("what would give"));
			return Optional.of(asked(line, why.wouldGive(wanted.setting(), wanted.value())));
		} else if (line.begins("what would make")) {
			return Optional.of(asked(line, why.wouldSpeak(speaker(line.after("what would make")))));
		} else if (line.begins("what would change")) {
			return Optional.of(asked(line, why.matters(Optional.of(Named.setting(line.after("what would change"), hand.ground().catalogue())))));
		} else if (line.begins("drop")) {
			return Optional.of(drop(line, line.after("drop")));
		} else if (line.begins("job ")) {
			return Optional.of(job(line, Named.job(line.after("job"), hand.ground().jobs())));
		} else if (line.begins("expect ")) {
			return Optional.of(changed(line, List.of(new KeepLines(hand).expect(line.after("expect")))));
		} else if (line.begins("keep")) {
			return Optional.of(Turn.wishing(session, new Wish.Keep(new KeepLines(hand).keep(line.after("keep")))));
		} else if (line.begins("save lines to")) {
			return Optional.of(Turn.wishing(session, new Wish.Save(file(line.after("save lines to")), session.script())));
		} else if (line.begins("replay")) {
			return Optional.of(Turn.wishing(session, new Wish.Replay(file(line.after("replay")))));
		}
		return Optional.empty();
	}

	private static String file(Span name) throws Misread {
		if (name.isEmpty()) {
			throw name.misread("The name of the file is missing.", "Write it at the end of the line.");
		}
		return name.bare().text();
	}

	private Turn rule(Span typed) throws Misread {
		if (!RuleLines.complete(typed.text())) {
			throw new Misread(typed.end(), typed.end(), "The rule has no end.", "Write end on a line of its own after what it proposes.");
		}
		Rule rule = RuleLines.read(typed, hand);
		AtHand after = hand.with(rule);
		if (after == hand) {
			return Turn.told(session, List.of(new Row(0, Tone.PLAIN, "This very rule is in force already.", "")));
		}
		Rows rows = new Rows().addAll(new Why(after, why.watch()).rule(rule));
		return told(typed, after, rows);
	}

	private Turn drop(Span line, Span name) throws Misread {
		Rule rule = Named.rule(name, hand.rules());
		List<Problem> problems = FindingOrder.of(hand.rulesWithout(rule)).problems();
		if (!problems.isEmpty()) {
			throw name.misread("The book cannot do without it: " + problems.get(0).what(), "Drop or redefine what asks for it first.");
		}
		return told(line, hand.without(rule), new Rows().add(0, Tone.QUIET, "no longer in force here: " + Named.of(rule)));
	}

	private Turn job(Span line, JobCase other) {
		AtHand after = hand.on(other);
		Rows rows = new Rows().addAll(new Listing(after).job());
		if (!hand.edits().isEmpty()) {
			rows.add(0, Tone.ATTENTION, "What was changed on " + hand.job().name() + " is put aside and not kept; undo brings it back.");
		}
		return Turn.told(session.changed(line.text(), after), rows.all());
	}

	private Turn changed(Span line, List<JobEdit> edits) throws Misread {
		try {
			AtHand after = hand.with(edits);
			return after == hand ? Turn.told(session, List.of(new Row(0, Tone.PLAIN, "The job says so already.", ""))) : told(line, after, new Rows());
		} catch (JobNotWritten refused) {
			throw line.misread(refused.problem().what(), refused.problem().remedy());
		}
	}

	private Turn told(Span line, AtHand after, Rows rows) {
		List<Row> difference = Difference.between(hand, after);
		rows.addAll(difference);
		if (difference.isEmpty()) {
			rows.add(0, Tone.QUIET, "Nothing else changes.");
		}
		return Turn.told(session.changed(line.text(), after), rows.all());
	}

	private Turn asked(Span line, List<Row> rows) {
		return Turn.told(session.asked(line.text()), rows);
	}

	private Turn otherJobs(Span line) throws Misread {
		if (hand.typed().isEmpty() && hand.dropped().isEmpty()) {
			throw line.misread("No rule has been tried here yet.", "Type or drop a rule first.");
		}
		return asked(line, why.otherJobs());
	}

	private List<Row> why(Span name) throws Misread {
		Optional<Setting> setting = hand.ground().catalogue().settingLabelled(name.bare().text());
		if (setting.isEmpty() && isRule(name)) {
			return why.rule(Named.rule(name, hand.rules()));
		}
		return why.setting(setting.isPresent() ? setting.get() : Named.setting(name, hand.ground().catalogue()));
	}

	private List<Row> whyNot(Span name) throws Misread {
		if (name.text().indexOf(':') < 0 || isRule(name)) {
			return why.rule(Named.rule(name, hand.rules()));
		}
		SettingValue wanted = settingValue(name);
		return why.not(wanted.setting(), wanted.value());
	}

	private boolean isRule(Span name) {
		return name.text().startsWith("\"") || hand.rules().stream().anyMatch(r -> r.name().equalsIgnoreCase(name.text().strip()));
	}

	private Rule speaker(Span name) throws Misread {
		String words = name.text();
		boolean speak = words.toLowerCase(Locale.ROOT).endsWith(" speak");
		return Named.rule(speak ? name.upTo(words.length() - " speak".length()) : name, hand.rules());
	}

	private record SettingValue(Setting setting, Value value) {
	}

	private SettingValue settingValue(Span said) throws Misread {
		int colon = said.text().indexOf(':');
		Setting setting = Named.setting(colon < 0 ? said : said.upTo(colon), hand.ground().catalogue());
		Span value = colon < 0 ? new Span("", said.end()) : said.from(colon + 1).bare();
		if (value.isEmpty()) {
			throw value.misread("It is not said which value of " + setting.label() + " is meant.", "Write a colon and " + setting.domain().allowed() + ".");
		}
		Misfit misfit = Misfit.of(setting.label(), value.text(), setting.domain());
		return new SettingValue(setting, setting.domain().read(value.text()).orElseThrow(() -> value.misread(misfit.what(), misfit.remedy())));
	}

	private List<Row> answer(Span asking) throws Misread {
		Optional<Setting> setting = hand.ground().catalogue().settingLabelled(asking.text());
		if (setting.isPresent()) {
			return new About(hand).of(setting.get());
		}
		Optional<Facts.Meant> meant = new Facts(hand.ground().catalogue()).begun(asking.text()).filter(m -> m.length() == asking.text().length());
		if (meant.isPresent()) {
			return new About(hand).of(meant.get());
		}
		Optional<Finding> finding = hand.outcome().findings().stream().filter(f -> f.label().equals(asking.normal())).findFirst();
		if (finding.isPresent()) {
			return List.of(new Row(0, Tone.PLAIN, "found: " + finding.get().label() + ", says "
					+ Named.withAuthority(finding.get().madeBy().get(0).rule()), ""));
		}
		return List.of(new Row(0, Tone.PLAIN, Expression.of(asking, hand), ""));
	}

	private List<Row> lines() {
		Rows rows = new Rows();
		session.lines().forEach(l -> l.lines().forEach(one -> rows.add(0, Tone.PLAIN, one.isBlank() ? " " : one)));
		return rows.isEmpty() ? rows.add(0, Tone.PLAIN, "No line is in force yet.").all() : rows.all();
	}

	private static List<Row> words() {
		Rows rows = new Rows().add(0, Tone.HEADING, "State or ask for a fact")
				.add(1, Tone.PLAIN, "outdoor unit stages: 2").add(1, Tone.PLAIN, "wires: add { colour: red, at control: R }")
				.add(1, Tone.PLAIN, "humidifier: none").add(1, Tone.PLAIN, "outdoor unit stages").add(1, Tone.PLAIN, "control circuit spare - 4 VA")
				.add(1, Tone.PLAIN, "OutdoorUnit( stages > 1 )");
		String group = "";
		for (BenchWord word : BenchWord.ALL) {
			if (!word.group().equals(group)) {
				group = word.group();
				rows.add(0, Tone.HEADING, group);
			}
			rows.add(1, Tone.PLAIN, (word.word() + (word.goesOn().startsWith(":") ? "" : " ") + word.goesOn()).strip()).add(2, Tone.QUIET, word.meaning());
		}
		return rows.all();
	}
}
