package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** Finds what would have to be different about a job for a rule to speak, or for a setting to come to a value. */
public final class WhatIf {
	/** More changes than this are no longer "the same job but for". */
	public static final int LARGEST = 3;
	private static final int ALTERNATIVES = 6;

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
	public List<Alternative> toFire(Job job, Rule rule, BooleanSupplier cancelled) {
		Slice slice = new Slice(List.of(rule), order, catalogue);
		return alternatives(job, slice, verdicts -> verdicts.verdicts.of(rule).truth() == Truth.TRUE,
				outcome -> outcome.firings().stream().anyMatch(f -> f.rule() == rule), Optional.empty(), cancelled);
	}

	/** @return the smallest changes to {@code job} that settle {@code setting} at {@code value}, those on site first */
	public List<Alternative> toSettle(Job job, Setting setting, Value value, BooleanSupplier cancelled) {
		List<Rule> rules = order.sequence().stream().filter(r -> !proposals(r, setting).isEmpty()).toList();
		Slice slice = new Slice(rules, order, catalogue);
		return alternatives(job, slice, tried -> settles(tried, rules, setting, value),
				outcome -> outcome.setting(setting).flatMap(SettingOutcome::value).filter(value::same).isPresent(),
				Optional.of(setting), cancelled);
	}

	/** A changed job with the verdicts of the slice. */
	private record Tried(JobFacts facts, Verdicts verdicts) {
	}

	private List<Alternative> alternatives(Job job, Slice slice, Predicate<Tried> quick, Predicate<Outcome> goal,
			Optional<Setting> asked, BooleanSupplier cancelled) {
		List<Rule> rules = slice.rules();
		Predicate<Job> reaches = changed -> {
			JobFacts facts = new JobFacts(catalogue.withCalculations(changed), catalogue);
			return quick.test(new Tried(facts, new Verdicts(order, facts, rules))) && goal.test(run.apply(changed));
		};
		List<Change> all = Candidates.of(slice, job);
		List<Change> possible = all.stream().filter(c -> c.possibleOnSite(job)).toList();
		List<List<Change>> found = new ArrayList<>(new Search(possible, job, reaches, ALTERNATIVES, cancelled).upTo(LARGEST));
		if (possible.size() < all.size()) {
			new Search(all, job, reaches, ALTERNATIVES, cancelled).upTo(LARGEST).stream()
					.filter(changes -> !changes.stream().allMatch(c -> c.possibleOnSite(job))).forEach(found::add);
		}
		Outcome before = run.apply(job);
		return found.stream().map(changes -> alternative(job, changes, before, asked))
				.sorted(Comparator.<Alternative, Boolean>comparing(a -> !a.onSite()).thenComparingInt(a -> a.changes().size()))
				.limit(ALTERNATIVES).toList();
	}

	private Alternative alternative(Job job, List<Change> changes, Outcome before, Optional<Setting> asked) {
		Job changed = job;
		for (Change change : changes) {
			changed = change.apply(changed);
		}
		List<Setting> others = Differences.between(before, run.apply(changed)).stream()
				.filter(s -> !asked.equals(Optional.of(s))).toList();
		return new Alternative(changes, changes.stream().allMatch(c -> c.possibleOnSite(job)), changed, others);
	}

	private static List<Action.Propose> proposals(Rule rule, Setting setting) {
		return rule.then().stream().filter(Action.Propose.class::isInstance).map(Action.Propose.class::cast)
				.filter(p -> p.setting().equals(setting)).toList();
	}

	private static boolean settles(Tried tried, List<Rule> rules, Setting setting, Value value) {
		Authority strongest = null;
		boolean agreed = false;
		for (Rule rule : rules) {
			var verdict = tried.verdicts.of(rule);
			if (verdict.truth() != Truth.TRUE || strongest != null && strongest.outranks(rule.authority())) {
				continue;
			}
			boolean all = proposals(rule, setting).stream().allMatch(p -> verdict.ways().stream()
					.allMatch(way -> p.value() instanceof Operand.Literal literal ? literal.value().same(value)
							: tried.facts.answer(way.values().get(p.value())).value().filter(value::same).isPresent()));
			agreed = strongest == rule.authority() ? agreed && all : all;
			strongest = rule.authority();
		}
		return agreed;
	}
}
