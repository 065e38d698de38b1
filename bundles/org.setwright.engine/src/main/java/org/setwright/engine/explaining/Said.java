package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.engine.language.Comparison;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** Says what a field is or should be as the trade does: "has 2 stages", "feeds cooling", "its fuel is propane". */
final class Said {
	private static final String ITS = "its ";

	private Said() {
	}

	/** @return what a fact that answers {@code value} for {@code field} does: "has 2 stages" */
	static String is(Field field, Value value) {
		return value instanceof Value.Flag flag ? yesOrNo(field, flag.yes()) : filled(field, List.of(value), "%s");
	}

	/**
	 * @param names what names bound earlier stand for, in words
	 * @return what a fact that passes {@code test} does: "has at least 2 stages"
	 */
	static String wanted(Test.OfField test, Function<Operand.Bound, String> names) {
		Field field = test.field();
		if (test instanceof Test.Compare compare) {
			return compared(field, compare, names);
		} else if (test instanceof Test.Among among) {
			boolean flags = field.domain() instanceof Domain.YesNo && among.values().size() == 1;
			return flags ? yesOrNo(field, ((Value.Flag) among.values().get(0)).yes() == among.among())
					: among.among() ? filled(field, among.values(), "%s") : Denied.of(field, among.values());
		} else if (test instanceof Test.Matches matches) {
			return ITS + field.label() + " reads like " + matches.expression().pattern();
		}
		boolean known = !(test instanceof Test.IsUnknown isUnknown && isUnknown.unknown());
		return ITS + field.label() + (known ? " is known" : " is not known");
	}

	/** @return several such phrases after "that": "that is red and whose gauge is 18 AWG" */
	static String that(List<String> phrases) {
		return joined(itsLast(phrases).stream().map(p -> p.startsWith(ITS) ? "whose " + p.substring(ITS.length()) : "that " + p).toList(), "and");
	}

	/** @return {@code subject} with several such phrases: "the outdoor unit's maker is Norrvik" */
	static String of(String subject, List<String> phrases) {
		String all = joined(itsLast(phrases), "and");
		return all.startsWith(ITS) ? subject + (subject.endsWith("s") ? "' " : "'s ") + all.substring(ITS.length()) : subject + " " + all;
	}

	/** What is said of the fact itself comes before what is said of something it has. */
	private static List<String> itsLast(List<String> phrases) {
		return phrases.stream().sorted(Comparator.comparing(p -> p.startsWith(ITS))).toList();
	}

	static String joined(List<String> words, String joint) {
		int last = words.size() - 1;
		return last <= 0 ? String.join("", words)
				: String.join(", ", words.subList(0, last)) + " " + joint + " " + words.get(last);
	}

	private static String compared(Field field, Test.Compare compare, Function<Operand.Bound, String> names) {
		Comparison comparison = compare.comparison();
		if (compare.right() instanceof Operand.Bound bound) {
			return ITS + field.label() + " " + comparison.words() + " " + names.apply(bound);
		}
		Value value = ((Operand.Literal) compare.right()).value();
		if (value instanceof Value.Flag flag) {
			return yesOrNo(field, flag.yes() == (comparison == Comparison.EQUAL));
		}
		return comparison == Comparison.NOT_EQUAL ? Denied.of(field, List.of(value)) : filled(field, List.of(value), amount(comparison, field));
	}

	/** @return what a fact that passes both does: "has a rating of at least 20 VA and at most 40 VA" */
	static String between(Test.Compare one, Test.Compare other) {
		Field field = one.field();
		String amounts = Stream.of(one, other).sorted(Comparator.comparing(Said::upper))
				.map(c -> amount(c.comparison(), field).replace("%s", ((Operand.Literal) c.right()).value().text())).collect(Collectors.joining(" and "));
		return filled(field, amounts);
	}

	private static boolean upper(Test.Compare compare) {
		return compare.comparison() == Comparison.LESS || compare.comparison() == Comparison.AT_MOST;
	}

	private static String amount(Comparison comparison, Field field) {
		boolean counted = field.domain() instanceof Domain.Whole;
		return switch (comparison) {
			case EQUAL, NOT_EQUAL -> "%s";
			case LESS -> counted ? "fewer than %s" : "below %s";
			case AT_MOST -> "at most %s";
			case MORE -> counted ? "more than %s" : "above %s";
			case AT_LEAST -> "at least %s";
		};
	}

	static String yesOrNo(Field field, boolean yes) {
		String[] both = field.says().split("\\|");
		return both[yes ? 0 : 1];
	}

	private static String filled(Field field, List<Value> values, String amount) {
		return filled(field, amount.replace("%s", joined(texts(field, values), "or")));
	}

	/** @return the values as they stand where the answer goes in what {@code field} says */
	static List<String> texts(Field field, List<Value> values) {
		return values.stream().map(v -> field.says().contains("{a}") ? article(v.text()) + v.text() : v.text()).toList();
	}

	/** One of something takes no plural. */
	private static String filled(Field field, String words) {
		String said = field.says().replace("{a}", words).replace("{}", words).replace(" of below ", " below ").replace(" of above ", " above ")
				.replace(" the no ", " no ").replace("lands on not ", "is not ")
				.replaceFirst("( to | for |^has )below ", "$1less than ").replaceFirst("( to | for |^has )above ", "$1more than ");
		boolean one = words.equals("1") || words.endsWith(" 1");
		return one && field.domain() instanceof Domain.Whole && said.endsWith("s") ? said.substring(0, said.length() - 1) : said;
	}

	private static String article(String words) {
		return words.endsWith("s") ? "" : "aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ";
	}

	/** @return the words with their first letter large, as a sentence */
	static String sentence(String words) {
		return capital(words) + ".";
	}

	static String capital(String words) {
		return Character.toUpperCase(words.charAt(0)) + words.substring(1);
	}

	static String listed(List<Value> values, String joint) {
		return joined(values.stream().map(Value::text).collect(Collectors.toList()), joint);
	}
}
