package org.setwright.engine.logic;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Decides tests of one fact in three-valued logic. */
public final class Tests {
	private Tests() {
	}

	/**
	 * Decides {@code test} for {@code item}.
	 *
	 * @param unknowns collects the unknown answers that keep it from being decided
	 */
	static Truth decide(Test test, JobFacts.Item item, Bindings bindings, Set<JobField> unknowns) {
		if (test instanceof Test.AllOf all) {
			return all(all.tests(), item, bindings, unknowns);
		} else if (test instanceof Test.AnyOf any) {
			return any(any.tests(), item, bindings, unknowns);
		}
		Test.OfField ofField = (Test.OfField) test;
		Object answer = bindings.plain(item, ofField.field());
		if (ofField instanceof Test.IsUnknown isUnknown && !item.phantom()) {
			return Truth.of((answer == null) == isUnknown.unknown());
		}
		if (ofField instanceof Test.Bind bind) {
			bindings.answer(bind.variable(), item);
		}
		if (answer == null) {
			unknowns.add(item.place(ofField.field()));
		}
		return known(ofField, answer, bindings, unknowns);
	}

	private static Truth known(Test.OfField test, Object answer, Bindings bindings, Set<JobField> unknowns) {
		if (test instanceof Test.Compare compare) {
			Object right = bindings.plain(compare.right());
			if (right == null) {
				unknowns.add(bindings.place((Operand.Bound) compare.right()));
			}
			return answer == null || right == null ? Truth.UNKNOWN : Truth.of(compare.comparison().holds(answer, right));
		} else if (answer == null) {
			return Truth.UNKNOWN;
		} else if (test instanceof Test.Among among) {
			return Truth.of(isAmong(answer, among.values()) == among.among());
		} else if (test instanceof Test.Matches matches) {
			return Truth.of(matches.expression().matcher((String) answer).matches());
		}
		return Truth.TRUE;
	}

	private static boolean isAmong(Object answer, List<Value> values) {
		for (Value value : values) {
			if (answer.equals(value.plain())) {
				return true;
			}
		}
		return false;
	}

	/** @return the tests of {@code test} by which {@code item} passes it: of those joined by or, the first that does */
	public static List<Test.OfField> passed(Test test, JobFacts.Item item, Bindings bindings) {
		if (test instanceof Test.AllOf all) {
			return all.tests().stream().flatMap(t -> passed(t, item, bindings).stream()).toList();
		} else if (test instanceof Test.AnyOf any) {
			return any.tests().stream().filter(t -> decide(t, item, bindings, new HashSet<>()) == Truth.TRUE).findFirst()
					.map(t -> passed(t, item, bindings)).orElse(List.of());
		}
		return List.of((Test.OfField) test);
	}

	private static Truth all(List<Test> tests, JobFacts.Item item, Bindings bindings, Set<JobField> unknowns) {
		Truth truth = Truth.TRUE;
		for (Test test : tests) {
			truth = truth.and(decide(test, item, bindings, unknowns));
			if (truth == Truth.FALSE) {
				return truth;
			}
		}
		return truth;
	}

	private static Truth any(List<Test> tests, JobFacts.Item item, Bindings bindings, Set<JobField> unknowns) {
		Truth truth = Truth.FALSE;
		for (Test test : tests) {
			truth = truth.or(decide(test, item, bindings, unknowns));
			if (truth == Truth.TRUE) {
				return truth;
			}
		}
		return truth;
	}
}
