package org.setwright.engine.explaining;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Value;

/** Says conditions in trade English, for reasons and for reading rules aloud. */
public final class Wording {
	private Wording() {
	}

	/** @return {@code condition} in words, without a full stop: "the outdoor unit's stages is at least 2" */
	public static String of(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			String tests = tests(pattern.test());
			return "there is " + pattern.kind().one() + (tests.isEmpty() ? "" : " whose " + tests);
		} else if (condition instanceof Condition.Found found) {
			return "this was found: " + finding(found.finding());
		} else if (condition instanceof Condition.Not not) {
			return absence(not.negated());
		} else if (condition instanceof Condition.Exists exists) {
			return of(exists.sought());
		}
		String joint = condition instanceof Condition.Either ? ", or " : ", and ";
		return condition.inner().stream().map(Wording::of).collect(Collectors.joining(joint));
	}

	/** @return that {@code ruledOut} does not hold, in words without a full stop */
	public static String absence(Condition ruledOut) {
		if (ruledOut instanceof Condition.Pattern pattern) {
			String tests = tests(pattern.test());
			return "there is no " + pattern.kind().label() + (tests.isEmpty() ? "" : " whose " + tests);
		} else if (ruledOut instanceof Condition.Found found) {
			return "this was not found: " + finding(found.finding());
		}
		return "it is not so that " + of(ruledOut);
	}

	/** @return what {@code test} wants of its field: "is at least 2" */
	public static String wanted(Test.OfField test) {
		if (test instanceof Test.Compare compare) {
			return compare.comparison().words() + " " + operand(compare.right());
		} else if (test instanceof Test.Among among) {
			return (among.among() ? "is " : "is none of ") + list(among.values(), among.among());
		} else if (test instanceof Test.Matches matches) {
			return "reads like " + matches.expression().pattern();
		} else if (test instanceof Test.IsUnknown isUnknown) {
			return isUnknown.unknown() ? "is unknown" : "is known";
		}
		return "is known";
	}

	/** @return a finding's word for people: DUAL_FUEL_JOB reads "dual fuel job" */
	public static String finding(String word) {
		return word.toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/** @return the value {@code operand} names, in words */
	public static String operand(Operand operand) {
		if (operand instanceof Operand.Literal literal) {
			return literal.value().text();
		}
		Operand.Bound bound = (Operand.Bound) operand;
		return "the " + bound.kind().label() + "'s " + bound.field().label();
	}

	private static String tests(Test test) {
		if (test instanceof Test.AllOf all) {
			return joined(all.tests(), " and ");
		} else if (test instanceof Test.AnyOf any) {
			return "either " + joined(any.tests(), " or ");
		}
		Test.OfField ofField = (Test.OfField) test;
		return ofField.field().label() + " " + wanted(ofField);
	}

	private static String joined(List<Test> tests, String joint) {
		return tests.stream().filter(t -> !(t instanceof Test.Bind && tests.size() > 1)).map(Wording::tests)
				.filter(t -> !t.isEmpty()).collect(Collectors.joining(joint));
	}

	private static String list(List<Value> values, boolean or) {
		List<String> texts = values.stream().map(Value::text).toList();
		int last = texts.size() - 1;
		return last == 0 ? texts.get(0)
				: String.join(", ", texts.subList(0, last)) + (or ? " or " : " and ") + texts.get(last);
	}
}
