package org.setwright.bench.changes;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Named;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/** Tells only what differs between two outcomes. */
public final class Difference {
	private static final int MOST_UNKNOWNS = 6;
	private final Rows rows = new Rows();

	private Difference() {
	}

	/** @return what the job comes to {@code now} and did not {@code before}; empty when nothing differs */
	public static List<Row> between(AtHand before, AtHand now) {
		Difference difference = new Difference();
		difference.cautions(before.outcome(), now.outcome());
		for (Setting setting : now.ground().catalogue().settings()) {
			difference.setting(setting, before.outcome().setting(setting), now.outcome().setting(setting));
		}
		difference.findings(before.outcome(), now.outcome());
		difference.startUp(before.outcome(), now.outcome());
		difference.unknowns(before.outcome(), now.outcome());
		difference.expectations(before, now);
		return difference.rows.all();
	}

	/** @return what a setting comes to now, beside what it came to before; empty when both are the same */
	public static boolean same(Optional<SettingOutcome> before, Optional<SettingOutcome> now) {
		return before.map(Coming::to).equals(now.map(Coming::to));
	}

	private void setting(Setting setting, Optional<SettingOutcome> before, Optional<SettingOutcome> now) {
		if (same(before, now)) {
			if (now.isPresent() && !Coming.by(before.get()).equals(Coming.by(now.get()))) {
				rows.add(0, Tone.PLAIN, setting.label() + ": still " + Coming.briefly(now.get()) + ", decided by " + Coming.by(now.get()));
				rows.add(1, Tone.QUIET, "before: " + Coming.by(before.get()));
			}
			return;
		}
		String was = before.map(b -> "was " + Coming.briefly(b)).orElse("was not needed");
		rows.add(0, now.map(Coming::tone).orElse(Tone.PLAIN), setting.label() + ": " + now.map(Coming::to).orElse("no longer needed") + " (" + was + ")");
		now.map(Coming::by).filter(by -> !by.isEmpty()).ifPresent(by -> rows.add(1, Tone.QUIET, "says " + by));
		now.ifPresent(n -> n.outranked().forEach(p -> rows.add(1, Tone.QUIET, "outranks " + p.value().text() + ", which "
				+ Named.withAuthority(p.rule()) + " says")));
	}

	private void cautions(Outcome before, Outcome now) {
		Function<Caution, String> key = c -> c.kind() + c.sentence();
		for (Caution caution : onlyIn(now.cautions(), before.cautions(), key)) {
			rows.add(0, tone(caution.kind()), caution.kind().label().toUpperCase(java.util.Locale.ROOT) + ": " + caution.sentence());
			rows.add(1, Tone.QUIET, "says " + rules(caution.raisedBy()));
		}
		onlyIn(before.cautions(), now.cautions(), key)
				.forEach(c -> rows.add(0, Tone.PLAIN, "no longer raised: " + c.kind().label() + ": " + c.sentence()));
	}

	/** @return how a caution stands out */
	public static Tone tone(CautionKind kind) {
		return switch (kind) {
			case STOP, DANGER -> Tone.ALARM;
			case LICENSED_WORK, CHECK_AT_START_UP -> Tone.ATTENTION;
			case NOTE -> Tone.PLAIN;
		};
	}

	private void findings(Outcome before, Outcome now) {
		for (Finding finding : onlyIn(now.findings(), before.findings(), Finding::name)) {
			rows.add(0, Tone.PLAIN, "found: " + finding.label());
			rows.add(1, Tone.QUIET, "says " + rules(finding.madeBy()));
		}
		onlyIn(before.findings(), now.findings(), Finding::name).forEach(f -> rows.add(0, Tone.PLAIN, "no longer found: " + f.label()));
	}

	private void startUp(Outcome before, Outcome now) {
		Function<StartUpCheck, String> key = c -> c.phase() + words(c);
		List<StartUpCheck> come = onlyIn(now.startUp(), before.startUp(), key);
		List<StartUpCheck> gone = onlyIn(before.startUp(), now.startUp(), key);
		for (StartUpCheck check : come) {
			boolean reads = gone.stream().anyMatch(g -> alike(g, check));
			rows.add(0, Tone.PLAIN, "start-up, " + check.phase().label() + (reads ? ", now reads: " : ": ") + words(check));
			rows.add(1, Tone.QUIET, "says " + check.saidBy().stream().map(Named::of).distinct().collect(Collectors.joining(", ")));
		}
		gone.stream().filter(g -> come.stream().noneMatch(c -> alike(g, c)))
				.forEach(c -> rows.add(0, Tone.PLAIN, "no longer at start-up, " + c.phase().label() + ": " + words(c)));
	}

	private static boolean alike(StartUpCheck a, StartUpCheck b) {
		return a.phase() == b.phase() && a.saidBy().equals(b.saidBy());
	}

	/** @return what to do in a start-up, or that it is only perhaps needed */
	public static String words(StartUpCheck check) {
		return (check.certain() ? "" : "perhaps needed: ") + check.callFor().text(UnitSystem.BOTH)
				+ (check.certain() ? " See: " + check.see().text(UnitSystem.BOTH) : "");
	}

	private void unknowns(Outcome before, Outcome now) {
		Function<ToFindOut, String> key = u -> u.unknown().label();
		List<ToFindOut> more = onlyIn(now.toFindOut(), before.toFindOut(), key);
		List<ToFindOut> fewer = onlyIn(before.toFindOut(), now.toFindOut(), key);
		if (!more.isEmpty()) {
			rows.add(0, Tone.ATTENTION, "now to find out: " + listed(more));
		}
		if (!fewer.isEmpty()) {
			rows.add(0, Tone.PLAIN, "no longer to find out: " + listed(fewer));
		}
	}

	private static String listed(List<ToFindOut> unknowns) {
		String first = unknowns.stream().limit(MOST_UNKNOWNS).map(u -> u.unknown().label()).collect(Collectors.joining("; "));
		return first + (unknowns.size() > MOST_UNKNOWNS ? "; and " + (unknowns.size() - MOST_UNKNOWNS) + " more" : "");
	}

	private void expectations(AtHand before, AtHand now) {
		if (!before.job().path().equals(now.job().path())) {
			return;
		}
		Map<String, Point> earlier = new LinkedHashMap<>();
		CheckedJob.of(before.job(), before.outcome()).asked().forEach(p -> earlier.put(p.what(), p));
		for (Point point : CheckedJob.of(now.job(), now.outcome()).asked()) {
			Point was = earlier.get(point.what());
			if (was == null || was.met() != point.met() || !was.expected().equals(point.expected())) {
				rows.add(0, point.met() ? Tone.GOOD : Tone.ALARM, (point.met() ? "as expected: " : "NOT AS EXPECTED: ") + point.what() + " " + point.sentence());
			}
		}
	}

	private static String rules(List<Firing> firings) {
		return firings.stream().map(f -> Named.withAuthority(f.rule())).distinct().collect(Collectors.joining("; "));
	}

	private static <T> List<T> onlyIn(Collection<T> these, Collection<T> others, Function<T, String> key) {
		List<String> known = others.stream().map(key).toList();
		return these.stream().filter(t -> !known.contains(key.apply(t))).toList();
	}
}
