package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Value;

/** What the facts and answers a rule speaks of are called in its words. Where it speaks of two wires they get letters. */
final class Names {
	/** Labels that begin or end with such a word are no noun, so they stand in quotes. */
	private static final Set<String> SMALL = Set.of("in", "at", "by", "for", "from", "to", "per", "over", "home", "serves", "expects", "feeds", "used",
			"acts", "runs");
	/** Choices that begin with such a word are no noun, so they stand in quotes. */
	private static final Set<String> DOING = Set.of("leave", "starts", "with", "when", "rests", "always", "never", "open", "together");
	private final Map<Condition.Pattern, String> letters = new LinkedHashMap<>();
	private final Map<String, String> facts = new LinkedHashMap<>();

	/** @param rule whose conditions are going to be said */
	Names(Rule rule) {
		List<Condition.Pattern> patterns = new ArrayList<>();
		rule.when().forEach(c -> collect(c, patterns));
		for (Condition.Pattern pattern : patterns) {
			FactKind kind = pattern.kind();
			boolean several = kind.many() && patterns.stream().filter(p -> p.kind().equals(kind)).count() > 1;
			List<String> variables = variables(pattern).toList();
			if (several && !variables.isEmpty()) {
				long before = letters.keySet().stream().filter(p -> p.kind().equals(kind)).count();
				letters.put(pattern, kind.label() + " " + (char) ('A' + before));
			}
			String fact = letters.getOrDefault(pattern, (kind.many() ? "that " : "the ") + kind.label());
			variables.forEach(v -> facts.put(v, kind.one().equals(kind.label()) ? kind.label() : fact));
		}
	}

	/** @return what the one fact that {@code pattern} asks for is called */
	String subject(Condition.Pattern pattern) {
		return pattern.kind().one().equals(pattern.kind().label()) ? pattern.kind().label() : "the " + pattern.kind().label();
	}

	/** @return the letter the fact gets, if any: ", call it wire A," */
	String called(Condition.Pattern pattern) {
		String letter = letters.get(pattern);
		return letter == null ? "" : ", call it " + letter + ",";
	}

	/** @return the answer {@code bound} stands for: "wire A's gauge" */
	String bound(Operand.Bound bound) {
		return answer(facts.getOrDefault(bound.variable(), "the " + bound.kind().label()), bound.field());
	}

	/** @return what the plain ones of {@code tests} want, each as the end of a sentence about the fact */
	List<String> wanted(List<Test> tests) {
		List<Test.OfField> plain = new ArrayList<>(tests.stream().filter(Wants::plain).map(Test.OfField.class::cast).toList());
		List<String> wanted = new ArrayList<>();
		while (!plain.isEmpty()) {
			Test.OfField first = plain.remove(0);
			Optional<Test.OfField> other = plain.stream().filter(t -> Wants.range(first, t)).findFirst();
			other.ifPresent(plain::remove);
			wanted.add(other.map(t -> Said.between((Test.Compare) first, (Test.Compare) t)).orElseGet(() -> Said.wanted(first, this::bound)));
		}
		return wanted;
	}

	/** @return what {@code field} of {@code subject} asks, as a noun or as "whether ..." or "what ..." */
	static String answer(String subject, Field field) {
		if (field.domain() instanceof Domain.YesNo) {
			return "whether " + subject + " " + Said.yesOrNo(field, true);
		}
		if (subject.endsWith(" " + field.label())) {
			return subject;
		}
		boolean noun = noun(field.label());
		String says = field.says();
		boolean whole = field.domain() instanceof Domain.Whole;
		if (!noun && says.matches("(is|feeds|serves|expects|lands|belongs|comes|takes) .*\\{\\}.*")) {
			return "what " + subject + " " + says.replace("the {}", "").replace("{}", "").strip().replace("  ", " ");
		}
		return possessive(subject + (subject.endsWith("s") ? "' " : "'s ") + (whole ? "number of " : "") + label(field.label()));
	}

	/** @return a label as it stands in a sentence: in quotes where it is no noun */
	static String label(String label) {
		return noun(label) ? label : '"' + label + '"';
	}

	/** @return a value as it stands in a sentence */
	static String value(Value value) {
		return value instanceof Value.OneOf && DOING.contains(first(value.text())) ? '"' + value.text() + '"' : value.text();
	}

	private static boolean noun(String label) {
		return !SMALL.contains(first(label)) && !SMALL.contains(label.substring(label.lastIndexOf(' ') + 1));
	}

	private static String first(String words) {
		return words.split(" ", 2)[0];
	}

	/** @return {@code words} with it's and they's turned into its and their where they stand first */
	static String possessive(String words) {
		return words.startsWith("it's ") ? "its " + words.substring(5)
				: words.startsWith("they's ") ? "their " + words.substring(7) : words;
	}

	static boolean plural(FactKind kind) {
		return kind.label().endsWith("s") && !kind.many();
	}

	private static void collect(Condition condition, List<Condition.Pattern> into) {
		if (condition instanceof Condition.Pattern pattern) {
			into.add(pattern);
		}
		condition.inner().forEach(c -> collect(c, into));
	}

	private static Stream<String> variables(Condition.Pattern pattern) {
		return Stream.concat(pattern.binding().stream(), variables(pattern.test()));
	}

	private static Stream<String> variables(Test test) {
		if (test instanceof Test.AllOf all) {
			return all.tests().stream().flatMap(Names::variables);
		} else if (test instanceof Test.AnyOf any) {
			return any.tests().stream().flatMap(Names::variables);
		}
		return test instanceof Test.Bind bind ? Stream.of(bind.variable()) : Stream.empty();
	}
}
