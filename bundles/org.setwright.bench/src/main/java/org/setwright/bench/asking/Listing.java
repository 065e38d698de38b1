package org.setwright.bench.asking;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setwright.bench.changes.Coming;
import org.setwright.bench.changes.Difference;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Named;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Setting;

/** Lists about the job at hand. */
public record Listing(AtHand hand) {

	/** @return which job it is, and how many settings came to what */
	public List<Row> job() {
		Map<String, Long> counts = hand.outcome().settings().stream()
				.collect(Collectors.groupingBy(s -> s.state().name().toLowerCase(Locale.ROOT), TreeMap::new, Collectors.counting()));
		String counted = counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey()).collect(Collectors.joining(", "));
		return new Rows().add(0, Tone.HEADING, "on the bench: " + hand.job().name(), hand.job().path())
				.add(1, Tone.PLAIN, counted.isEmpty() ? "no settings" : "settings: " + counted).all();
	}

	/** @return the settings that are settled */
	public List<Row> settled() {
		List<SettingOutcome> all = hand.outcome().settings().stream().filter(s -> s.state() == SettingOutcome.State.SETTLED).toList();
		return settings(all, "Nothing is settled yet.");
	}

	/** @return the settings that are not settled */
	public List<Row> open() {
		List<SettingOutcome> all = hand.outcome().settings().stream().filter(s -> s.state() != SettingOutcome.State.SETTLED).toList();
		return settings(all, "No setting is open: every one the job needs is settled.");
	}

	private static List<Row> settings(List<SettingOutcome> settings, String none) {
		Rows rows = new Rows();
		String group = "";
		for (SettingOutcome setting : settings) {
			if (!setting.setting().group().equals(group)) {
				group = setting.setting().group();
				rows.add(0, Tone.HEADING, group);
			}
			String by = Coming.by(setting);
			rows.add(1, Coming.tone(setting), setting.setting().label() + ": " + Coming.to(setting));
			if (!by.isEmpty()) {
				rows.add(2, Tone.QUIET, "says " + by);
			}
		}
		return orNone(rows, none);
	}

	/** @return what is worth looking up */
	public List<Row> unknown() {
		Rows rows = new Rows();
		for (ToFindOut unknown : hand.outcome().toFindOut()) {
			String settings = unknown.holdsOpen().stream().map(Setting::label).collect(Collectors.joining(", "));
			rows.add(0, Tone.ATTENTION, unknown.unknown().label());
			if (!settings.isEmpty()) {
				rows.add(1, Tone.PLAIN, "could change " + settings);
			}
			if (!unknown.couldWarn().isEmpty()) {
				rows.add(1, Tone.PLAIN, "could raise a serious caution: " + unknown.couldWarn().stream().map(Named::of).distinct()
						.collect(Collectors.joining(", ")));
			}
		}
		return orNone(rows, "Nothing unknown holds a setting or a caution open.");
	}

	/** @return the cautions, most serious first */
	public List<Row> cautions() {
		Rows rows = new Rows();
		for (Caution caution : hand.outcome().cautions()) {
			rows.add(0, Difference.tone(caution.kind()), caution.kind().label().toUpperCase(Locale.ROOT) + ": " + caution.sentence());
			rows.add(1, Tone.QUIET, "says " + caution.raisedBy().stream().map(f -> Named.of(f.rule())).distinct().collect(Collectors.joining(", ")));
		}
		return orNone(rows, "No caution is raised.");
	}

	/** @return what rules concluded on the way */
	public List<Row> findings() {
		Rows rows = new Rows();
		hand.outcome().findings().forEach(f -> rows.add(0, Tone.PLAIN, f.label()).add(1, Tone.QUIET,
				"says " + f.madeBy().stream().map(m -> Named.of(m.rule())).distinct().collect(Collectors.joining(", "))));
		return orNone(rows, "Nothing was found.");
	}

	/** @return what to prove at start-up */
	public List<Row> startUp() {
		Rows rows = new Rows();
		String phase = "";
		for (StartUpCheck check : hand.outcome().startUp()) {
			if (!check.phase().label().equals(phase)) {
				phase = check.phase().label();
				rows.add(0, Tone.HEADING, phase);
			}
			if (!check.undecided().isEmpty()) {
				rows.add(1, Tone.ALARM, "STOP: do not start this before a person has decided: "
						+ check.undecided().stream().map(Setting::label).collect(Collectors.joining(", ")));
			}
			rows.add(1, check.certain() ? Tone.PLAIN : Tone.ATTENTION, Difference.words(check));
		}
		return orNone(rows, "No rule names anything to prove at start-up.");
	}

	/** @return what the job states */
	public List<Row> facts() {
		Rows rows = new Rows();
		About about = new About(hand);
		hand.ground().catalogue().kinds().stream().filter(k -> !k.calculated() && hand.job().job().entries().containsKey(k))
				.forEach(k -> rows.addAll(about.kind(k, 0)));
		return orNone(rows, "Nothing is known of the job yet. State something, for example \"outdoor unit kind: air-source heat pump\".");
	}

	/** @return every calculation there is, with what it comes to */
	public List<Row> calculations() {
		Rows rows = new Rows();
		About about = new About(hand);
		hand.ground().catalogue().kinds().stream().filter(FactKind::calculated).forEach(k -> rows.addAll(about.kind(k, 0)));
		return rows.all();
	}

	/** @return every rule in force with what became of it; those typed first */
	public List<Row> rules() {
		Rows rows = new Rows();
		hand.typed().forEach(r -> rows.add(0, Tone.HEADING, "typed here: " + Named.withAuthority(r) + ": " + hand.inquiry().whyNot(r).status().words()));
		hand.dropped().forEach(r -> rows.add(0, Tone.ATTENTION, "not in force here: " + Named.of(r), r.at().toString()));
		for (WhyNot why : hand.inquiry().ofEveryRule()) {
			if (why.status() != WhyNot.Status.SILENT && !hand.typed().contains(why.rule())) {
				rows.add(0, Tone.PLAIN, why.status().words() + ": " + Named.withAuthority(why.rule()), why.rule().at().toString());
			}
		}
		long silent = hand.inquiry().ofEveryRule().stream().filter(w -> w.status() == WhyNot.Status.SILENT).count();
		return rows.add(0, Tone.QUIET, silent == 1 ? "One more rule is silent." : silent + " more rules are silent.").all();
	}

	/** @return everything the job expects, and whether it comes to it */
	public List<Row> expected() {
		Rows rows = new Rows();
		for (Point point : CheckedJob.of(hand.job(), hand.outcome()).asked()) {
			rows.add(0, point.met() ? Tone.GOOD : Tone.ALARM, (point.met() ? "as expected: " : "NOT AS EXPECTED: ") + point.what() + " " + point.sentence());
		}
		return orNone(rows, "The job expects nothing.");
	}

	private static List<Row> orNone(Rows rows, String none) {
		return rows.isEmpty() ? rows.add(0, Tone.PLAIN, none).all() : rows.all();
	}
}
