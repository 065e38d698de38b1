package org.setwright.engine.logic;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;

/**
 * Tries every way in which conditions could hold for one job, in three-valued logic, straight from the conditions as
 * written. It shares no code with the rule engine that decides, so that each is checked against the other on every run.
 */
public final class Trial {
	private final JobFacts job;
	private final Function<String, Verdict> findings;
	/** What happens if the conditions hold; empty when only they are asked about. */
	private final Optional<Rule> rule;
	private final Bindings bindings;
	private final Deque<Verdict.Step> steps = new ArrayDeque<>(4);
	private final List<Verdict.Way> ways = new ArrayList<>(1);
	private Set<JobField> heldBy = Set.of();
	private Truth best = Truth.FALSE;

	private Trial(JobFacts job, Function<String, Verdict> findings, Optional<Rule> rule, Bindings bindings) {
		this.bindings = bindings;
		this.job = job;
		this.findings = findings;
		this.rule = rule;
	}

	/**
	 * Tries the conditions of {@code rule}. A value it would propose from an unknown answer holds it open too.
	 *
	 * @param findings what is known of a finding, by its name
	 * @param looked gets every place of the job that is read
	 */
	static Verdict of(Rule rule, JobFacts job, Function<String, Verdict> findings, Consumer<JobField> looked) {
		return new Trial(job, findings, Optional.of(rule), new Bindings(looked)).verdict(rule.when());
	}

	/** Tries conditions that ask for no finding. */
	public static Verdict of(List<Condition> conditions, JobFacts job) {
		return new Trial(job, name -> Verdict.FALSE, Optional.empty(), Bindings.after(List.of())).verdict(conditions);
	}

	/**
	 * Tries conditions below not, with the names bound so far.
	 *
	 * @param standing gets every fact by which they hold or might hold
	 */
	static Truth apart(List<Condition> conditions, JobFacts job, Function<String, Verdict> findings, Bindings bindings,
			Consumer<JobFacts.Item> standing) {
		Trial trial = new Trial(job, findings, Optional.empty(), bindings);
		trial.walk(conditions, 0, Truth.TRUE, List.of(), (truth, unknowns) -> {
			trial.best = trial.best.or(truth);
			trial.steps.forEach(step -> step.item().ifPresent(standing));
		});
		return trial.best;
	}

	private Verdict verdict(List<Condition> conditions) {
		walk(conditions, 0, Truth.TRUE, List.of(), this::reached);
		return best == Truth.FALSE ? Verdict.FALSE : new Verdict(best, ways, best == Truth.UNKNOWN ? heldBy : Set.of());
	}

	/** What to do when all conditions of a list have been walked. */
	private interface End {
		void reached(Truth truth, List<Set<JobField>> unknowns);
	}

	private void reached(Truth truth, List<Set<JobField>> unknowns) {
		List<Operand.Bound> shown = rule.map(Rule::shown).orElse(List.of());
		List<Operand.Bound> used = rule.map(Rule::used).orElse(List.of());
		Map<Operand.Bound, JobField> values = shown.isEmpty() && used.isEmpty() ? Map.of() : new HashMap<>();
		Set<JobField> missing = used.isEmpty() ? Set.of() : new LinkedHashSet<>();
		shown.forEach(bound -> values.put(bound, bindings.place(bound)));
		for (Operand.Bound bound : used) {
			values.put(bound, bindings.place(bound));
			if (bindings.plain(bound) == null) {
				missing.add(bindings.place(bound));
			}
		}
		Truth all = missing.isEmpty() ? truth : Truth.UNKNOWN;
		best = best.or(all);
		if (all == Truth.TRUE) {
			ways.add(new Verdict.Way(List.copyOf(steps), values));
		} else {
			heldBy = heldBy.isEmpty() ? new LinkedHashSet<>() : heldBy;
			unknowns.forEach(heldBy::addAll);
			heldBy.addAll(missing);
		}
	}

	private void walk(List<Condition> conditions, int next, Truth sofar, List<Set<JobField>> unknowns, End end) {
		if (next == conditions.size()) {
			end.reached(sofar, unknowns);
			return;
		}
		End rest = (truth, more) -> walk(conditions, next + 1, truth, more, end);
		Condition condition = conditions.get(next);
		if (condition instanceof Condition.Pattern pattern) {
			pattern(pattern, sofar, unknowns, rest);
		} else if (condition instanceof Condition.All all) {
			walk(all.inner(), 0, sofar, unknowns, rest);
		} else if (condition instanceof Condition.Either either) {
			either.inner().forEach(branch -> walk(List.of(branch), 0, sofar, unknowns, rest));
		} else if (condition instanceof Condition.Found found) {
			Verdict made = findings.apply(found.finding());
			go(condition, null, sofar.and(made.truth()), unknowns, made.unknowns(), rest);
		} else {
			Set<JobField> inside = new LinkedHashSet<>();
			Truth truth = apart(condition.inner(), inside);
			go(condition, null, sofar.and(condition instanceof Condition.Not ? truth.not() : truth), unknowns, inside, rest);
		}
	}

	private void pattern(Condition.Pattern pattern, Truth sofar, List<Set<JobField>> unknowns, End rest) {
		Set<JobField> own = new LinkedHashSet<>();
		for (JobFacts.Item item : bindings.items(job, pattern.kind())) {
			own = own.isEmpty() ? own : new LinkedHashSet<>();
			if (pattern.binding().isPresent()) {
				bindings.fact(pattern.binding().get(), item);
			}
			Truth truth = Tests.decide(pattern.test(), item, bindings, own);
			if (item.phantom()) {
				truth = truth.and(Truth.UNKNOWN);
				own.add(JobField.presence(pattern.kind()));
			}
			go(pattern, item, sofar.and(truth), unknowns,
					truth == Truth.UNKNOWN ? own : Set.of(), rest);
		}
	}

	/** @param item the fact that makes a pattern hold; null for other conditions */
	private void go(Condition condition, JobFacts.Item item, Truth truth, List<Set<JobField>> unknowns, Set<JobField> more, End rest) {
		if (truth == Truth.FALSE) {
			return;
		}
		List<Set<JobField>> all = unknowns;
		if (!more.isEmpty()) {
			all = new ArrayList<>(unknowns);
			all.add(more);
		}
		steps.addLast(new Verdict.Step(condition, Optional.ofNullable(item)));
		rest.reached(truth, all);
		steps.removeLast();
	}

	/** Tries conditions whose names are not seen outside. @param unknowns gets what keeps them open */
	private Truth apart(List<Condition> conditions, Set<JobField> unknowns) {
		Truth[] found = { Truth.FALSE };
		walk(conditions, 0, Truth.TRUE, List.of(), (truth, open) -> {
			found[0] = found[0].or(truth);
			open.forEach(unknowns::addAll);
		});
		if (found[0] != Truth.UNKNOWN) {
			unknowns.clear();
		}
		return found[0];
	}
}
