package org.setwright.engine.explaining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.FactKind;

/** Says the conditions of one rule so that they can be read aloud: no brackets, and no doubt what belongs together. */
final class Clauses {
	private final Names names;

	Clauses(Names names) {
		this.names = names;
	}

	/** @return all of {@code when} in words, to stand after "if"; not empty */
	String all(List<Condition> when) {
		return when.stream().map(this::of).collect(Collectors.joining(", and "));
	}

	private String of(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			return pattern.kind().many() ? there(pattern, "") : one(pattern);
		} else if (condition instanceof Condition.Found found) {
			return finding(found.finding()) + " was found";
		} else if (condition instanceof Condition.Not not) {
			return absent(not.negated());
		} else if (condition instanceof Condition.Exists exists) {
			return exists.sought() instanceof Condition.Pattern some && some.kind().many() ? there(some, "at least one ") : of(exists.sought());
		}
		return listed(condition.inner(), condition instanceof Condition.Either, this::of);
	}

	/** @return a finding's word for people, in quotes: DUAL_FUEL_JOB reads "dual fuel job" */
	static String finding(String word) {
		return '"' + word.toLowerCase(Locale.ROOT).replace('_', ' ') + '"';
	}

	private String absent(Condition ruledOut) {
		if (ruledOut instanceof Condition.Found found) {
			return finding(found.finding()) + " was not found";
		} else if (ruledOut instanceof Condition.Exists exists) {
			return absent(exists.sought());
		} else if (ruledOut instanceof Condition.Pattern pattern) {
			boolean nothingMore = Wants.of(pattern.test()).isEmpty();
			if (pattern.kind().calculated() && nothingMore) {
				return names.subject(pattern) + " does not apply here";
			}
			return pattern.kind().exactlyOne() || pattern.kind().calculated() ? "it is not so that " + one(pattern)
					: (Names.plural(pattern.kind()) ? "there are no " : "there is no ") + pattern.kind().label() + narrowed(pattern);
		}
		return "it is not so that " + of(ruledOut);
	}

	/** A kind a job has one of at most is named as known: "the outdoor unit is ...". */
	private String one(Condition.Pattern pattern) {
		List<Test> tests = Wants.of(pattern.test());
		if (tests.isEmpty()) {
			return pattern.kind().calculated() ? names.subject(pattern) + " applies here" : there(pattern.kind(), "");
		}
		Subject subject = new Subject(names.subject(pattern), Names.plural(pattern.kind()));
		List<String> clauses = new ArrayList<>();
		List<String> plain = names.wanted(tests);
		if (!plain.isEmpty()) {
			clauses.add(subject.does(plain));
		}
		tests.stream().filter(t -> !Wants.plain(t)).forEach(t -> clauses.add(clause(subject, t)));
		return String.join(" and ", clauses);
	}

	private String there(Condition.Pattern pattern, String atLeast) {
		return atLeast.isEmpty() ? there(pattern.kind(), names.called(pattern)) + narrowed(pattern)
				: "there is " + atLeast + pattern.kind().label() + names.called(pattern) + narrowed(pattern);
	}

	private static String there(FactKind kind, String called) {
		return (Names.plural(kind) ? "there are " + kind.label() : "there is " + kind.one()) + called;
	}

	/** What a fact among others has to be: " that is red and whose gauge is 18 AWG". */
	private String narrowed(Condition.Pattern pattern) {
		List<Test> tests = Wants.of(pattern.test());
		List<String> plain = names.wanted(tests);
		Subject it = Subject.it(Names.plural(pattern.kind()));
		List<String> more = tests.stream().filter(t -> !Wants.plain(t)).map(t -> "for which " + clause(it, t)).toList();
		List<String> all = new ArrayList<>(plain.isEmpty() ? List.of() : List.of(Said.that(plain)));
		all.addAll(more);
		return all.isEmpty() ? "" : " " + String.join(" and ", all);
	}

	private String clause(Subject subject, Test test) {
		if (test instanceof Test.AllOf all) {
			return listed(Wants.of(all), false, t -> clause(subject, t));
		} else if (test instanceof Test.AnyOf any) {
			return listed(any.tests(), true, t -> clause(subject, t));
		} else if (Wants.plain(test)) {
			return subject.does(names.wanted(List.of(test)));
		}
		boolean known = !(test instanceof Test.IsUnknown isUnknown && isUnknown.unknown());
		String answer = Names.answer(subject.text(), ((Test.OfField) test).field());
		boolean noun = !answer.startsWith("wh");
		return noun ? answer + (known ? " is known" : " is not known") : "it is " + (known ? "" : "not ") + "known " + answer;
	}

	private static <T> String listed(List<T> parts, boolean either, Function<T, String> said) {
		List<String> all = parts.stream().map(said).toList();
		if (all.size() == 1) {
			return all.get(0);
		} else if (all.size() == 2) {
			return (either ? "either " : "both ") + all.get(0) + (either ? " or " : " and ") + all.get(1);
		}
		int last = all.size() - 1;
		return (either ? "one of these holds: " : "all of these hold: ") + String.join("; ", all.subList(0, last)) + (either ? "; or " : "; and ")
				+ all.get(last);
	}

	/** What is spoken of: by its name the first time, as "it" from then on. */
	private static final class Subject {
		private final String name;
		private final boolean plural;
		private boolean named;

		Subject(String name, boolean plural) {
			this.name = name;
			this.plural = plural;
		}

		static Subject it(boolean plural) {
			Subject it = new Subject("", plural);
			it.named = true;
			return it;
		}

		String text() {
			String text = named ? plural ? "they" : "it" : name;
			named = true;
			return text;
		}

		String does(List<String> phrases) {
			return Names.possessive(Said.of(text(), phrases));
		}
	}
}
