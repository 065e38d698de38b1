package org.setwright.bench.asking;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.bench.changes.Coming;
import org.setwright.bench.changes.Difference;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Named;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.check.reasons.ReasonOutline;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.change.Sensitivity;
import org.setwright.engine.change.Watch;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Why and why not, and what would change it. @param watch ends what takes long */
public record Why(AtHand hand, Watch watch) {
	private static final int MOST_JOBS = 12;

	/** @return why {@code setting} comes to what it does */
	public List<Row> setting(Setting setting) {
		Optional<SettingOutcome> outcome = hand.outcome().setting(setting);
		if (outcome.isEmpty()) {
			return new Rows().add(0, Tone.PLAIN, setting.label() + ": this job does not need it, and no rule proposes it.")
					.add(1, Tone.PLAIN, "Ask \"why not " + setting.label() + ": VALUE\" for the rules that could.").all();
		}
		return outline(ReasonOutline.of(outcome.get(), hand.job()));
	}

	/** @return what became of {@code rule}, which is in force or was only asked for, and why */
	public List<Row> rule(Rule rule) {
		Rows rows = new Rows();
		WhyNot why = hand.inquiry().whyNot(rule);
		whyNot(0, why, rows);
		if (why.blockers().isEmpty()) {
			hand.outcome().firings().stream().filter(f -> f.rule() == rule)
					.forEach(f -> rows.addAll(outline(ReasonOutline.of(f, hand.job())).stream().skip(1).toList()));
		}
		return rows.all();
	}

	/** @return whether the conditions of {@code asking}, which is not in force, hold, and by what or why not */
	public List<Row> conditions(Rule asking) {
		Rows rows = new Rows();
		WhyNot why = hand.inquiry().whyNot(asking);
		switch (why.status()) {
			case FIRED, OUTRANKED -> rows.add(0, Tone.GOOD, "Yes, that holds.");
			case SILENT -> rows.add(0, Tone.PLAIN, "No, that does not hold.");
			case HELD_OPEN -> rows.add(0, Tone.ATTENTION, "That is open: it depends on what is unknown.");
		}
		Outcome asked = hand.edition().rehearse(hand.job().job()).under(hand.edition().amend(hand.rulesWith(asking))).outcome();
		asked.firings().stream().filter(f -> f.rule() == asking).flatMap(f -> f.reasons().stream()).map(r -> r.sentence()).distinct()
				.forEach(s -> rows.add(1, Tone.PLAIN, s));
		blockers(1, why, rows);
		return rows.all();
	}

	/** @return why {@code setting} does not come to {@code value} */
	public List<Row> not(Setting setting, Value value) {
		Rows rows = new Rows();
		String now = hand.outcome().setting(setting).flatMap(SettingOutcome::value).map(v -> "comes to " + v.text()).orElse("has no value");
		rows.add(0, Tone.PLAIN, setting.label() + " " + now + " on this job");
		List<WhyNot> rules = hand.inquiry().whyNot(setting, value);
		rules.forEach(w -> whyNot(0, w, rows));
		if (rules.isEmpty()) {
			rows.add(0, Tone.PLAIN, "No rule in force ever says " + value.text() + " for " + setting.label() + ".");
		}
		return rows.all();
	}

	/** @return the smallest changes by which {@code setting} would come to {@code value} */
	public List<Row> wouldGive(Setting setting, Value value) {
		return changes(hand.inquiry().toSettle(setting, value, watch), setting.label() + " would come to " + value.text());
	}

	/** @return the smallest changes by which {@code rule}, which is in force, would speak */
	public List<Row> wouldSpeak(Rule rule) {
		return changes(hand.inquiry().toFire(rule, watch), "the rule would speak");
	}

	/** @return the answers that would change most were they wrong; only those that change {@code setting}, when there is one */
	public List<Row> matters(Optional<Setting> setting) {
		Rows rows = new Rows();
		for (Sensitivity one : hand.inquiry().whatMatters(() -> !watch.goOn(1))) {
			if (setting.isEmpty() || one.changes().contains(setting.get())) {
				rows.add(0, Tone.PLAIN, "if " + one.instead().sentence(hand.job().job()), at(List.of(one.place())));
				rows.add(1, Tone.QUIET, "changes " + one.changes().stream().map(Setting::label).collect(Collectors.joining(", ")));
			}
		}
		return rows.isEmpty() ? rows.add(0, Tone.PLAIN, "No single answer that is stated would change " + setting.map(Setting::label).orElse("a setting")
				+ " if it were another.").all() : rows.all();
	}

	/** @return on which saved jobs the rules typed and dropped here change a setting, found without the rule engine */
	public List<Row> otherJobs() {
		Rows rows = new Rows();
		int tried = 0;
		int changed = 0;
		for (JobCase job : hand.ground().jobs()) {
			if (!watch.goOn(1)) {
				rows.add(0, Tone.ATTENTION, "Ended after " + tried + " of " + hand.ground().jobs().size() + " saved jobs.");
				return rows.all();
			}
			Rehearsal before = hand.ground().edition().rehearse(job.job());
			Rehearsal after = before.under(hand.amendment());
			if (after != before) {
				List<String> settings = settings(before.outcome(), after.outcome());
				changed += settings.isEmpty() ? 0 : 1;
				otherJob(job, changed <= MOST_JOBS ? settings : List.of(), rows);
			}
			tried++;
		}
		if (changed > MOST_JOBS) {
			rows.add(0, Tone.PLAIN, "and " + (changed - MOST_JOBS) + " more jobs");
		}
		String counted = changed == 0 ? "What was tried changes no setting on any of the " + tried + " saved jobs."
				: "What was tried changes settings on " + changed + " of " + tried + " saved jobs.";
		return new Rows().add(0, Tone.HEADING, counted).addAll(rows.all()).all();
	}

	private static void otherJob(JobCase job, List<String> settings, Rows rows) {
		if (!settings.isEmpty()) {
			rows.add(0, Tone.PLAIN, job.name(), job.path());
			settings.forEach(s -> rows.add(1, Tone.PLAIN, s));
		}
	}

	private List<String> settings(Outcome before, Outcome after) {
		return hand.ground().catalogue().settings().stream().filter(s -> !Difference.same(before.setting(s), after.setting(s)))
				.map(s -> s.label() + ": " + after.setting(s).map(Coming::briefly).orElse("not needed") + " (was "
						+ before.setting(s).map(Coming::briefly).orElse("not needed") + ")").toList();
	}

	private List<Row> changes(Alternatives alternatives, String goal) {
		Rows rows = new Rows();
		if (alternatives.found().isEmpty()) {
			rows.add(0, Tone.PLAIN, alternatives.largest() == 0 ? "Nothing has to change." : alternatives.nothing(goal));
		}
		for (Alternative alternative : alternatives.found()) {
			String sentence = alternative.changes().stream().map(c -> c.sentence(hand.job().job())).collect(Collectors.joining(", and "));
			rows.add(0, Tone.PLAIN, (alternative.onSite() ? "If " : "On another job, where ") + sentence + ", " + goal + ".");
			if (!alternative.alsoChanges().isEmpty()) {
				rows.add(1, Tone.QUIET, "this also changes: " + alternative.alsoChanges().stream().map(Setting::label).collect(Collectors.joining(", ")));
			}
		}
		return rows.all();
	}

	private void whyNot(int depth, WhyNot why, Rows rows) {
		rows.add(depth, why.status() == WhyNot.Status.HELD_OPEN ? Tone.ATTENTION : Tone.PLAIN,
				Named.withAuthority(why.rule()) + ": " + why.status().words(), why.rule().at().toString());
		why.outrankedBy().forEach(p -> rows.add(depth + 1, Tone.PLAIN,
				"outranked by " + Named.withAuthority(p.rule()) + ", which says " + p.setting().label() + " " + p.value().text(), p.rule().at().toString()));
		blockers(depth + 1, why, rows);
	}

	private void blockers(int depth, WhyNot why, Rows rows) {
		for (Blocker blocker : why.blockers()) {
			rows.add(depth, Tone.PLAIN, blocker.sentence(), at(blocker.looked()));
			blocker.makers().forEach(m -> whyNot(depth + 1, m, rows));
		}
		if (!why.heldBy().isEmpty()) {
			rows.add(depth, Tone.ATTENTION, "open until known: " + why.heldBy().stream().map(JobField::label).sorted().collect(Collectors.joining("; ")));
		}
	}

	private String at(List<JobField> places) {
		return places.stream().map(hand.job().positions()::get).filter(Objects::nonNull).sorted().map(Position::toString).distinct()
				.collect(Collectors.joining(", "));
	}

	private static List<Row> outline(List<ReasonOutline.Step> steps) {
		return steps.stream().map(s -> new Row(s.depth(), "unknown".equals(s.kind()) ? Tone.ATTENTION : s.depth() == 0 ? Tone.HEADING : Tone.PLAIN,
				s.words(), s.at())).toList();
	}
}
