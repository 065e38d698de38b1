package org.setwright.engine.logic;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.JobField;

/**
 * For a rule that does not fire: the way of choosing facts for its conditions that leaves the fewest tests failing, and
 * all obstacles on that way. So a technician sees everything that keeps the rule silent at once, and nothing that does
 * not matter.
 */
public final class NearestWay {
	private final JobFacts job;
	private final Function<String, Verdict> findings;
	private final Bindings bindings = Bindings.after(List.of());
	private final Deque<Chosen> chosen = new ArrayDeque<>();
	private final Deque<Obstacle> obstacles = new ArrayDeque<>();
	private List<Obstacle> fewest = List.of();
	private int least = Integer.MAX_VALUE;

	private NearestWay(JobFacts job, Function<String, Verdict> findings) {
		this.job = job;
		this.findings = findings;
	}

	/** @return what stands between {@code rule} and firing; empty when it fires */
	public static List<Obstacle> obstacles(Rule rule, JobFacts job, Function<String, Verdict> findings) {
		NearestWay way = new NearestWay(job, findings);
		way.walk(rule.when(), 0, 0, way::reached);
		return way.fewest;
	}

	private void reached(int cost) {
		if (cost < least) {
			least = cost;
			fewest = List.copyOf(obstacles);
		}
	}

	private void walk(List<Condition> conditions, int next, int cost, Consumer<Integer> end) {
		if (cost >= least) {
			return;
		} else if (next == conditions.size()) {
			end.accept(cost);
			return;
		}
		Consumer<Integer> rest = c -> walk(conditions, next + 1, c, end);
		Condition condition = conditions.get(next);
		if (condition instanceof Condition.Pattern pattern) {
			pattern(pattern, cost, rest);
		} else if (condition instanceof Condition.Found found) {
			boolean made = findings.apply(found.finding()).truth() == Truth.TRUE;
			step(made ? null : new Obstacle.NotFound(found), made ? cost : cost + 1, rest);
		} else if (condition instanceof Condition.Not not) {
			not(not, cost, rest);
		} else if (condition instanceof Condition.Either either) {
			either.inner().forEach(branch -> walk(List.of(branch), 0, cost, rest));
		} else {
			walk(condition.inner(), 0, cost, rest);
		}
	}

	private void step(Obstacle obstacle, int cost, Consumer<Integer> rest) {
		if (obstacle != null) {
			obstacles.addLast(obstacle);
		}
		rest.accept(cost);
		if (obstacle != null) {
			obstacles.removeLast();
		}
	}

	private void pattern(Condition.Pattern pattern, int cost, Consumer<Integer> rest) {
		List<JobFacts.Item> items = job.items(pattern.kind());
		boolean nobody = items.isEmpty() || items.get(0).phantom();
		for (JobFacts.Item item : nobody ? List.<JobFacts.Item>of() : items) {
			bindings.pattern(pattern, item);
			List<Test.OfField> failing = failing(pattern.test(), item);
			if (free(item, failing.isEmpty())) {
				chosen.addLast(new Chosen(item, failing.isEmpty()));
				step(failing.isEmpty() ? null : new Obstacle.Unfit(pattern, item, failing, named(failing)), cost + failing.size(), rest);
				chosen.removeLast();
			}
		}
		if (nobody || pattern.kind().many()) {
			bindings.pattern(pattern, new JobFacts.Item(pattern.kind(), items.size(), new Object[pattern.kind().fields().size()], true));
			step(new Obstacle.NoFact(pattern, nobody && !items.isEmpty()), cost + 1 + size(pattern.test()), rest);
		}
	}

	private Map<Operand.Bound, JobField> named(List<Test.OfField> tests) {
		Map<Operand.Bound, JobField> named = new LinkedHashMap<>();
		for (Test.OfField test : tests) {
			if (test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound bound) {
				bindings.placeOf(bound).ifPresent(place -> named.put(bound, place));
			}
		}
		return named;
	}

	/** One item of a list cannot be wanted in two ways: where it would have to change for one condition, it serves no other. */
	private boolean free(JobFacts.Item item, boolean passes) {
		return !item.kind().many() || chosen.stream().noneMatch(c -> c.item == item && !(passes && c.passes));
	}

	/** An item and whether it passes the pattern it was chosen for. */
	private record Chosen(JobFacts.Item item, boolean passes) {
	}

	/** @return the fewest tests of {@code test} that keep {@code item} from certainly passing */
	private List<Test.OfField> failing(Test test, JobFacts.Item item) {
		if (test instanceof Test.AllOf all) {
			return all.tests().stream().flatMap(t -> failing(t, item).stream()).toList();
		} else if (test instanceof Test.AnyOf any) {
			List<List<Test.OfField>> branches = any.tests().stream().map(t -> failing(t, item)).toList();
			return branches.stream().min(java.util.Comparator.comparingInt(List::size)).orElseThrow();
		}
		Test.OfField ofField = (Test.OfField) test;
		boolean passes = Tests.decide(ofField, item, bindings, new LinkedHashSet<>()) == Truth.TRUE;
		return passes ? List.of() : List.of(ofField);
	}

	private static int size(Test test) {
		return test instanceof Test.AllOf all ? all.tests().stream().mapToInt(NearestWay::size).sum()
				: test instanceof Test.AnyOf any ? any.tests().stream().mapToInt(NearestWay::size).min().orElse(0) : 1;
	}

	private void not(Condition.Not not, int cost, Consumer<Integer> rest) {
		Set<JobFacts.Item> standing = new LinkedHashSet<>();
		Truth truth = Trial.apart(not.inner(), job, findings, bindings, standing::add);
		step(truth == Truth.FALSE ? null : new Obstacle.InTheWay(not, new ArrayList<>(standing)),
				truth == Truth.FALSE ? cost : cost + 1, rest);
	}
}
