package org.setwright.check.strength;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;

/** The names a rule gives to facts and answers, and those it uses. */
final class Names {
	private final Set<String> given = new HashSet<>();
	private final Set<String> used = new HashSet<>();

	private Names(Rule rule) {
		rule.when().forEach(this::condition);
		rule.then().forEach(action -> {
			if (action instanceof Action.Propose propose) {
				operand(propose.value());
			} else if (action instanceof Action.StartUp check) {
				check.readings().forEach(this::operand);
			}
		});
	}

	/** @return whether every name that {@code rule} uses still stands for something */
	static boolean allBound(Rule rule) {
		Names names = new Names(rule);
		return names.given.containsAll(names.used);
	}

	private void condition(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			pattern.binding().ifPresent(given::add);
			test(pattern.test());
		}
		condition.inner().forEach(this::condition);
	}

	private void test(Test test) {
		if (test instanceof Test.Bind bind) {
			given.add(bind.variable());
		} else if (test instanceof Test.Compare compare) {
			operand(compare.right());
		}
		List<Test> inner = test instanceof Test.AllOf all ? all.tests() : test instanceof Test.AnyOf any ? any.tests() : List.of();
		inner.forEach(this::test);
	}

	private void operand(Operand operand) {
		if (operand instanceof Operand.Bound bound) {
			used.add(bound.variable());
		}
	}
}
