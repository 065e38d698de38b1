package org.setwright.engine.throughput;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;

/**
 * Rules as somebody who knows Drools would write them, with no thought of unknowns: nearly word for word what stands in the
 * book. Only rules that ask for a missing finding have a lower salience, so that they wait for those that make it.
 */
final class PlainDrl {
	private PlainDrl() {
	}

	/** @return one package; rule number n is called "n" */
	static String of(List<Rule> rules) {
		List<String> findings = new ArrayList<>();
		StringBuilder out = new StringBuilder("package rules\nimport " + PlainClasses.PACKAGE + ".*\nimport " + Marks.class.getName()
				+ "\nglobal Marks marks\n");
		for (int i = 0; i < rules.size(); i++) {
			Rule rule = rules.get(i);
			out.append("rule \"").append(i).append('"').append(waits(rule.when(), false) ? " salience -1" : "").append("\nwhen\n");
			rule.when().forEach(c -> out.append("    ").append(condition(c)).append('\n'));
			out.append("then\n    marks.fired( ").append(i).append(" );\n");
			rule.then().stream().filter(Action.Find.class::isInstance).forEach(a -> out.append(find(((Action.Find) a).finding(), findings)));
			out.append("end\n");
		}
		return out.toString();
	}

	private static String find(String finding, List<String> findings) {
		if (!findings.contains(finding)) {
			findings.add(finding);
		}
		return "    if ( marks.first( " + findings.indexOf(finding) + " ) ) { insert( new Finding( \"" + finding + "\" ) ); }\n";
	}

	private static boolean waits(List<Condition> conditions, boolean negated) {
		return conditions.stream().anyMatch(c -> negated && c instanceof Condition.Found || waits(c.inner(), negated || c instanceof Condition.Not));
	}

	private static String condition(Condition condition) {
		if (condition instanceof Condition.Pattern pattern) {
			return pattern.binding().map(b -> b + " : ").orElse("") + pattern.kind().name() + "( " + test(pattern.test(), ", ") + " )";
		} else if (condition instanceof Condition.Found found) {
			return "Finding( name == \"" + found.finding() + "\" )";
		} else if (condition instanceof Condition.Not not) {
			return "not " + condition(not.negated());
		} else if (condition instanceof Condition.Exists exists) {
			return "exists " + condition(exists.sought());
		}
		String joint = condition instanceof Condition.Either ? " or " : " and ";
		return condition.inner().stream().map(PlainDrl::condition).collect(Collectors.joining(joint, "( ", " )"));
	}

	private static String test(Test test, String joint) {
		if (test instanceof Test.AllOf all) {
			return all.tests().stream().map(t -> test(t, " && ")).collect(Collectors.joining(joint));
		} else if (test instanceof Test.AnyOf any) {
			return any.tests().stream().map(t -> "( " + test(t, " && ") + " )").collect(Collectors.joining(" || "));
		} else if (test instanceof Test.Bind bind) {
			return bind.variable() + " : " + bind.field().name();
		} else if (test instanceof Test.Compare compare) {
			return compare.field().name() + " " + compare.comparison().sign() + " " + (compare.right() instanceof Operand.Literal literal
					? PlainClasses.literal(literal.value(), compare.field().domain()) : bound((Operand.Bound) compare.right()));
		} else if (test instanceof Test.Among among) {
			return among.field().name() + (among.among() ? " in ( " : " not in ( ") + among.values().stream()
					.map(v -> PlainClasses.literal(v, among.field().domain())).collect(Collectors.joining(", ")) + " )";
		} else if (test instanceof Test.Matches matches) {
			return matches.field().name() + " matches " + PlainClasses.quoted(matches.expression().pattern());
		}
		throw new IllegalArgumentException("plain rules cannot ask whether something is unknown: " + test);
	}

	private static String bound(Operand.Bound bound) {
		return bound.ofFact() ? bound.variable() + "." + bound.field().name() : bound.variable();
	}
}
