package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Finds what would have to be different about a job for a rule to speak, or for a setting to come to a value. */
public final class WhatIf {
	/** More changes than this are no longer "the same job but for". */
	public static final int LARGEST = 5;
	private static final int ENOUGH = 6;

	private final Catalogue catalogue;
	private final FindingOrder order;
	private final Function<Job, Outcome> run;

	/** @param run runs a job for real; every alternative is run before it is given */
	public WhatIf(Catalogue catalogue, FindingOrder order, Function<Job, Outcome> run) {
		this.catalogue = catalogue;
		this.order = order;
		this.run = run;
	}

	/** @return the smallest changes to {@code job} that make {@code rule} speak, those possible on site first */
	public Alternatives toFire(Job job, Rule rule, Watch watch) {
		return alternatives(job, new Slice(List.of(rule), order, catalogue),
				(verdicts, facts) -> verdicts.of(rule).truth() == Truth.TRUE ? Optional.empty() : Optional.of(verdicts.looked(rule)),
				outcome -> outcome.firings().stream().anyMatch(f -> f.rule() == rule), Optional.empty(), watch);
	}

	/** @return the smallest changes to {@code job} that settle {@code setting} at {@code value}, those on site first */
	public Alternatives toSettle(Job job, Setting setting, Value value, Watch watch) {
		SettleGoal goal = new SettleGoal(order.sequence(), setting, value);
		return alternatives(job, new Slice(goal.rules(), order, catalogue), goal::missed,
				outcome -> outcome.setting(setting).flatMap(SettingOutcome::value).filter(value::same).isPresent(),
				Optional.of(setting), watch);
	}

	private Alternatives alternatives(Job job, Slice slice, BiFunction<Verdicts, JobFacts, Optional<Set<JobField>>> missed,
			Predicate<Outcome> goal, Optional<Setting> asked, Watch watch) {
		Function<Job, Optional<Set<JobField>>> quick = changed -> {
			JobFacts facts = new JobFacts(catalogue.withCalculations(changed), catalogue);
			return missed.apply(new Verdicts(order, facts), facts);
		};
		Candidates candidates = new Candidates(slice, catalogue, job);
		Search onSite = new Search(candidates, c -> c.possibleOnSite(job), quick, j -> goal.test(run.apply(j)), ENOUGH, watch);
		Search any = new Search(candidates, c -> true, quick, j -> goal.test(run.apply(j)), ENOUGH, watch);
		List<ChangedJob> found = new ArrayList<>(onSite.upTo(job, LARGEST));
		if (!onSite.ended()) {
			any.upTo(job, LARGEST).stream().filter(m -> !m.changes().stream().allMatch(c -> c.possibleOnSite(job))).forEach(found::add);
		}
		Outcome before = run.apply(job);
		return new Alternatives(found.stream().map(made -> alternative(made, before, asked))
				.sorted(Comparator.<Alternative, Boolean>comparing(a -> !a.onSite()).thenComparingInt(a -> a.changes().size()))
				.limit(ENOUGH).toList(), LARGEST, !onSite.ended() && !any.ended());
	}

	private Alternative alternative(ChangedJob made, Outcome before, Optional<Setting> asked) {
		List<Setting> others = Differences.between(before, run.apply(made.job())).stream()
				.filter(s -> !asked.equals(Optional.of(s))).toList();
		boolean onSite = made.changes().stream().allMatch(c -> c.possibleOnSite(made.original()));
		return new Alternative(made.changes(), onSite, made.job(), others);
	}
}
