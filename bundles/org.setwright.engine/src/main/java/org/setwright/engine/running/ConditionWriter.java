package org.setwright.engine.running;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Field;

/** Writes the conditions of one rule for {@link DrlWriter}, each in certain or possible form. */
final class ConditionWriter {
	/** The fields used as {@code $fact.field}, by the fact's name. */
	private final Map<String, Set<Field>> usedOfFact = new HashMap<>();
	/** Those of them that an action proposes, so that they have to be known. */
	private final Map<String, Set<Field>> proposed = new HashMap<>();

	ConditionWriter(Rule rule) {
		rule.when().forEach(this::collect);
		for (Action action : rule.then()) {
			if (action instanceof Action.Propose propose && propose.value() instanceof Operand.Bound bound && bound.ofFact()) {
				note(usedOfFact, bound);
				note(proposed, bound);
			}
		}
	}

	/** @return {@code condition} such that it holds when it certainly does, or else when it possibly does */
	String write(Condition condition, boolean certain) {
		if (condition instanceof Condition.Pattern pattern) {
			return pattern(pattern, certain);
		} else if (condition instanceof Condition.Found found) {
			return "Found( name == " + DrlWriter.quoted(found.finding()) + (certain ? ", certain == true )" : " )");
		} else if (condition instanceof Condition.Not not) {
			return "not ( " + write(not.negated(), !certain) + " )";
		} else if (condition instanceof Condition.Exists exists) {
			return "exists ( " + write(exists.sought(), certain) + " )";
		}
		String joint = condition instanceof Condition.Either ? " or " : " and ";
		return condition.inner().stream().map(c -> write(c, certain)).collect(Collectors.joining(joint, "( ", " )"));
	}

	private String pattern(Condition.Pattern pattern, boolean certain) {
		Set<String> parts = new LinkedHashSet<>();
		if (certain) {
			parts.add("phantom == false");
		}
		pattern.binding().ifPresent(name -> {
			usedOfFact.getOrDefault(name, Set.of()).forEach(f -> parts.add(ofFact(name, f) + " : " + DrlWriter.field(f)));
			if (certain) {
				proposed.getOrDefault(name, Set.of()).forEach(f -> parts.add(DrlWriter.field(f) + " != null"));
			}
		});
		binds(pattern.test(), parts);
		tests(pattern.test(), certain, parts);
		return DrlWriter.type(pattern.kind()) + "( " + String.join(", ", parts) + " )";
	}

	/** Separate tests are quicker than joined ones: the engine shares and indexes them. */
	private void tests(Test test, boolean certain, Set<String> parts) {
		if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> tests(t, certain, parts));
		} else if (certain && test instanceof Test.OfField ofField && !(test instanceof Test.IsUnknown)) {
			nullable(ofField).forEach(n -> parts.add(n + " != null"));
			parts.add(bare(ofField));
		} else {
			parts.add(test(test, certain));
		}
		parts.remove("");
	}

	private static void binds(Test test, Set<String> parts) {
		if (test instanceof Test.Bind bind) {
			parts.add(answer(bind.variable()) + " : " + DrlWriter.field(bind.field()));
		} else if (test instanceof Test.AllOf all) {
			all.tests().forEach(t -> binds(t, parts));
		}
	}

	/** @return the test, or "" when it always holds */
	private String test(Test test, boolean certain) {
		if (test instanceof Test.AllOf all) {
			return joined(all.tests().stream().map(t -> test(t, certain)).toList(), " && ");
		} else if (test instanceof Test.AnyOf any) {
			return joined(any.tests().stream().map(t -> test(t, certain)).toList(), " || ");
		} else if (test instanceof Test.IsUnknown isUnknown) {
			String field = DrlWriter.field(isUnknown.field());
			return isUnknown.unknown() ? field + " == null"
					: certain ? field + " != null" : "( " + field + " != null || phantom == true )";
		} else if (test instanceof Test.Bind && !certain) {
			return "";
		}
		Test.OfField ofField = (Test.OfField) test;
		List<String> parts = new ArrayList<>(nullable(ofField).stream().map(n -> n + (certain ? " != null" : " == null")).toList());
		parts.add(bare(ofField));
		return joined(parts, certain ? " && " : " || ");
	}

	private static String joined(List<String> parts, String joint) {
		List<String> written = parts.stream().filter(t -> !t.isEmpty()).toList();
		return written.isEmpty() ? "" : "( " + String.join(joint, written) + " )";
	}

	/** The engine takes null for false and zero in some comparisons, so each one has to ask for null first. */
	private static List<String> nullable(Test.OfField test) {
		String field = DrlWriter.field(test.field());
		return test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound bound
				? List.of(field, name(bound)) : List.of(field);
	}

	/** @return the test of a known answer, or "" when that is all it asks */
	private static String bare(Test.OfField test) {
		String field = DrlWriter.field(test.field());
		if (test instanceof Test.Compare compare) {
			return field + " " + compare.comparison().sign() + " " + (compare.right() instanceof Operand.Literal literal
					? DrlWriter.literal(literal.value().plain()) : name((Operand.Bound) compare.right()));
		} else if (test instanceof Test.Among among) {
			return field + (among.among() ? " in ( " : " not in ( ") + among.values().stream()
					.map(v -> DrlWriter.literal(v.plain())).collect(Collectors.joining(", ")) + " )";
		} else if (test instanceof Test.Matches matches) {
			return field + " matches " + DrlWriter.quoted(matches.expression().pattern());
		}
		return "";
	}

	private void collect(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			collect(pattern.test());
		}
		condition.inner().forEach(this::collect);
	}

	private void collect(Test test) {
		if (test instanceof Test.Compare compare && compare.right() instanceof Operand.Bound bound && bound.ofFact()) {
			note(usedOfFact, bound);
		} else if (test instanceof Test.AllOf all) {
			all.tests().forEach(this::collect);
		} else if (test instanceof Test.AnyOf any) {
			any.tests().forEach(this::collect);
		}
	}

	private static void note(Map<String, Set<Field>> into, Operand.Bound bound) {
		into.computeIfAbsent(bound.variable(), x -> new LinkedHashSet<>()).add(bound.field());
	}

	private static String name(Operand.Bound bound) {
		return bound.ofFact() ? ofFact(bound.variable(), bound.field()) : answer(bound.variable());
	}

	private static String answer(String variable) {
		return "$a_" + variable.substring(1);
	}

	private static String ofFact(String variable, Field field) {
		return "$f_" + variable.substring(1) + "_" + field.name();
	}
}
