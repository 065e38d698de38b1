package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.outcome.Reason;
import org.setwright.trade.catalogue.FactKind;

/** Says conditions in trade English, for reasons and for reading rules aloud. */
public final class Wording {
	private Wording() {
	}

	/** @return {@code condition} in words, without a full stop: "there is an outdoor unit that has at least 2 stages" */
	public static String of(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			return there(pattern.kind()) + that(pattern.test());
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
			return (plural(pattern.kind()) ? "there are no " : "there is no ") + pattern.kind().label() + that(pattern.test());
		} else if (ruledOut instanceof Condition.Found found) {
			return "this was not found: " + finding(found.finding());
		}
		return "it is not so that " + of(ruledOut);
	}

	/** @return what {@code test} wants of its field: "is at least 2" */
	public static String wanted(Test.OfField test) {
		return wanted(test, Wording::named);
	}

	/** @param names what names bound earlier stand for, in words @return what {@code test} wants of its field */
	public static String wanted(Test.OfField test, Function<Operand.Bound, String> names) {
		if (test instanceof Test.Compare compare) {
			return compare.comparison().words() + " " + (compare.right() instanceof Operand.Literal literal ? literal.value().text()
					: names.apply((Operand.Bound) compare.right()));
		} else if (test instanceof Test.Among among) {
			return (among.among() ? "is " : "is none of ") + Said.listed(among.values(), among.among() ? "or" : "and");
		} else if (test instanceof Test.Matches matches) {
			return "reads like " + matches.expression().pattern();
		}
		return test instanceof Test.IsUnknown isUnknown && isUnknown.unknown() ? "is unknown" : "is known";
	}

	/** @return that {@code item} passes because of {@code tested}, as a sentence */
	public static String passes(JobFacts.Item item, List<Reason.Tested> tested) {
		if (tested.isEmpty()) {
			return Said.sentence(item.kind().many() ? named(item) + " is there" : there(item.kind()));
		}
		return Said.sentence(answers(item, tested));
	}

	/** @return that {@code nearest} does not pass the tests {@code failing}, as a sentence: what is, and what the rule wants */
	public static String fails(JobFacts.Item nearest, List<Reason.Tested> tested, List<Test.OfField> failing,
			Function<Operand.Bound, String> names) {
		List<String> wanted = failing.stream().map(t -> Said.wanted(t, names)).distinct().toList();
		String wants = plural(nearest.kind()) ? Said.of("they", wanted).replace("they's ", "their ").replace(" its ", " their ")
				: Said.of("it", wanted).replace("it's ", "its ");
		return Said.sentence(answers(nearest, tested) + "; the rule wants that " + wants);
	}

	/** @return a finding's word for people: DUAL_FUEL_JOB reads "dual fuel job" */
	public static String finding(String word) {
		return word.toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	/** @return the value {@code operand} names, in words */
	public static String operand(Operand operand) {
		return operand instanceof Operand.Literal literal ? literal.value().text() : named((Operand.Bound) operand);
	}

	/** @return "wire 2" or "the outdoor unit" */
	public static String named(JobFacts.Item item) {
		boolean numbered = item.kind().many() && !item.phantom();
		boolean uncountable = item.kind().one().equals(item.kind().label());
		return numbered ? item.kind().label() + " " + (item.item() + 1) : (uncountable ? "" : "the ") + item.kind().label();
	}

	private static String there(FactKind kind) {
		return plural(kind) ? "there are " + kind.label() : "there is " + kind.one();
	}

	private static String named(Operand.Bound bound) {
		return "the " + bound.kind().label() + "'s " + bound.field().label();
	}

	private static String answers(JobFacts.Item item, List<Reason.Tested> tested) {
		List<String> known = tested.stream().filter(t -> t.actual().isKnown())
				.map(t -> Said.is(t.field().field().orElseThrow(), t.actual().value().orElseThrow())).distinct().toList();
		List<String> unknown = tested.stream().filter(t -> !t.actual().isKnown()).map(t -> t.field().field().orElseThrow().label())
				.distinct().toList();
		String missing = Said.joined(unknown, "and");
		return known.isEmpty() ? "not known of " + named(item) + ": " + missing
				: Said.of(named(item), known) + (unknown.isEmpty() ? "" : "; not known: " + missing);
	}

	private static boolean plural(FactKind kind) {
		return kind.label().endsWith("s") && !kind.many();
	}

	private static String that(Test test) {
		List<String> phrases = new ArrayList<>();
		phrases(test, phrases);
		return phrases.isEmpty() ? "" : " " + Said.that(phrases);
	}

	private static void phrases(Test test, List<String> into) {
		if (test instanceof Test.AllOf all) {
			all.tests().stream().filter(t -> !(t instanceof Test.Bind && all.tests().size() > 1)).forEach(t -> phrases(t, into));
		} else if (test instanceof Test.AnyOf any) {
			List<String> ways = new ArrayList<>();
			any.tests().forEach(t -> {
				List<String> one = new ArrayList<>();
				phrases(t, one);
				ways.add(Said.joined(one, "and"));
			});
			into.add("either " + Said.joined(ways, "or"));
		} else {
			into.add(Said.wanted((Test.OfField) test, Wording::named));
		}
	}
}
