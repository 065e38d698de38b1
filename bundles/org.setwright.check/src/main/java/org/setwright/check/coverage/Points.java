package org.setwright.check.coverage;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.book.Position;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.explaining.Wording;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.engine.logic.Obstacle;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;

/** The things of one rule that can hold or fail, each counted over jobs. */
final class Points {
	private final Rule rule;
	private final Map<Object, int[]> counts = new IdentityHashMap<>();
	private final List<Object> order = new ArrayList<>();
	private final Map<Object, Position> places = new IdentityHashMap<>();

	Points(Rule rule) {
		this.rule = rule;
		rule.when().forEach(this::add);
	}

	/** Counts one job. */
	void count(Rehearsal job) {
		Set<Object> held = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
		Verdict verdict = job.verdict(rule);
		verdict.ways().forEach(way -> way.steps().forEach(step -> held.addAll(parts(step.condition()))));
		held.forEach(part -> counts.get(part)[0]++);
		if (verdict.truth() == Truth.FALSE) {
			Set<Object> failed = failed(job.obstacles(rule));
			failed.forEach(part -> counts.get(part)[1]++);
		}
	}

	List<ConditionCoverage> result() {
		return order.stream().map(p -> new ConditionCoverage(words(p), places.get(p), counts.get(p)[0], counts.get(p)[1])).toList();
	}

	private void add(Condition condition) {
		if (condition instanceof Condition.All || condition instanceof Condition.Either) {
			condition.inner().forEach(this::add);
			return;
		}
		parts(condition).forEach(part -> {
			order.add(part);
			counts.put(part, new int[2]);
			places.put(part, part instanceof Test.OfField test ? test.at() : condition.at());
		});
	}

	/** A pattern counts by its tests; the names it gives test nothing worth counting. */
	private static List<Object> parts(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			List<Object> parts = new ArrayList<>();
			tests(pattern.test(), parts);
			return parts.isEmpty() ? List.of(pattern) : parts;
		}
		return List.of(condition);
	}

	private static void tests(Test test, List<Object> into) {
		if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> tests(t, into));
		} else if (!(test instanceof Test.Bind)) {
			into.add(test);
		}
	}

	private Set<Object> failed(List<Obstacle> obstacles) {
		Set<Object> failed = java.util.Collections.newSetFromMap(new IdentityHashMap<>());
		for (Obstacle obstacle : obstacles) {
			List<Object> parts = parts(obstacle.condition());
			boolean whole = parts.get(0) == obstacle.condition();
			if (obstacle instanceof Obstacle.Unfit unfit && !whole) {
				parts.stream().filter(p -> contains((Test) p, unfit.failing())).forEach(failed::add);
			} else if (whole || !(obstacle instanceof Obstacle.NoFact)) {
				failed.addAll(parts);
			}
		}
		failed.retainAll(counts.keySet());
		return failed;
	}

	private static boolean contains(Test test, List<Test.OfField> failing) {
		return test instanceof Test.AnyOf any ? any.tests().stream().anyMatch(t -> contains(t, failing))
				: test instanceof Test.AllOf all ? all.tests().stream().anyMatch(t -> contains(t, failing))
						: failing.stream().anyMatch(f -> f == test);
	}

	private static String words(Object part) {
		if (part instanceof Condition condition) {
			return Wording.of(condition);
		} else if (part instanceof Test.OfField test) {
			return test.field().label() + " " + Wording.wanted(test);
		}
		return String.join(part instanceof Test.AnyOf ? " or " : " and ",
				(part instanceof Test.AnyOf any ? any.tests() : ((Test.AllOf) part).tests()).stream().map(Points::words).toList());
	}
}
