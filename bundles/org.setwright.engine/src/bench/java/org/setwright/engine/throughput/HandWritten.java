package org.setwright.engine.throughput;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Comparison;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test;
import org.setwright.trade.catalogue.Domain;

/**
 * The rules as Java that a programmer would write for this one book: a method with nested loops for each rule, called one
 * after the other, findings first. It stops at the first way in which a rule holds.
 */
final class HandWritten {
	static final String NAME = "Written";
	private static final int CHUNK = 50;

	private final Map<String, String> variables = new HashMap<>();
	private final List<String> patterns = new ArrayList<>();
	private int names;

	private HandWritten() {
	}

	/** @return source of a {@code Function<Site, BitSet>} that gives the numbers of the rules that hold */
	static String source(List<Rule> rules, FindingOrder order) {
		HandWritten writer = new HandWritten();
		StringBuilder methods = new StringBuilder();
		StringBuilder chunks = new StringBuilder();
		StringBuilder calls = new StringBuilder();
		List<Rule> sequence = order.sequence();
		for (int i = 0; i < sequence.size(); i++) {
			Rule rule = sequence.get(i);
			int number = rules.indexOf(rule);
			if (i % CHUNK == 0) {
				calls.append("\t\t\tchunk").append(i / CHUNK).append("();\n");
				chunks.append(i == 0 ? "" : "\t\t}\n").append("\t\tvoid chunk").append(i / CHUNK).append("() {\n");
			}
			chunks.append("\t\t\tif (rule").append(number).append("()) { fired.set(").append(number).append("); ")
					.append(made(rule).map(f -> "found" + f + " = true; ").collect(Collectors.joining())).append("}\n");
			methods.append("\t\tboolean rule").append(number).append("() {\n\t\t\t").append(writer.all(rule.when(), "if (true) { return true; }"))
					.append("\n\t\t\treturn false;\n\t\t}\n");
		}
		String findings = rules.stream().flatMap(HandWritten::made).distinct().map(f -> "\t\tboolean found" + f + ";\n")
				.collect(Collectors.joining());
		return "package " + PlainClasses.PACKAGE + ";\nimport java.util.BitSet;\npublic final class " + NAME
				+ " implements java.util.function.Function<Site, BitSet> {\n" + String.join("", writer.patterns)
				+ "\tpublic BitSet apply(Site site) {\n\t\tRun run = new Run(site);\n\t\trun.all();\n\t\treturn run.fired;\n\t}\n"
				+ "\tstatic final class Run {\n\t\tfinal Site site;\n\t\tfinal BitSet fired = new BitSet();\n" + findings
				+ "\t\tRun(Site site) { this.site = site; }\n\t\tvoid all() {\n" + calls + "\t\t}\n" + chunks + "\t\t}\n" + methods + "\t}\n}\n";
	}

	private static Stream<String> made(Rule rule) {
		return rule.then().stream().filter(Action.Find.class::isInstance).map(a -> ((Action.Find) a).finding()).distinct();
	}

	/** @return statements that do {@code then} for each way in which all conditions hold */
	private String all(List<Condition> conditions, String then) {
		return conditions.isEmpty() ? then : one(conditions.get(0), () -> all(conditions.subList(1, conditions.size()), then));
	}

	/** @param then written after the condition, because it may use what that binds */
	private String one(Condition condition, java.util.function.Supplier<String> then) {
		if (condition instanceof Condition.Pattern pattern) {
			return pattern(pattern, then);
		} else if (condition instanceof Condition.Found found) {
			return "if (found" + found.finding() + ") { " + then.get() + " }";
		} else if (condition instanceof Condition.All all) {
			return all.inner().isEmpty() ? then.get()
					: one(all.inner().get(0), () -> one(new Condition.All(all.inner().subList(1, all.inner().size()), all.at()), then));
		}
		int number = names++;
		String hit = "if (true) { hit" + number + " = true; break look" + number + "; }";
		String ways = condition.inner().stream().map(c -> one(c, () -> hit)).collect(Collectors.joining(" "));
		return "boolean hit" + number + " = false; look" + number + ": { " + ways + " } if (" + (condition instanceof Condition.Not ? "!" : "") + "hit"
				+ number + ") { " + then.get() + " }";
	}

	private String pattern(Condition.Pattern pattern, java.util.function.Supplier<String> then) {
		String fact = "fact" + names++;
		pattern.binding().ifPresent(b -> variables.put(b, fact));
		String test = test(pattern.test(), fact);
		String place = "site." + PlainClasses.place(pattern.kind());
		return pattern.kind().many()
				? "for (" + pattern.kind().name() + " " + fact + " : " + place + ") { if (" + test + ") { " + then.get() + " } }"
				: pattern.kind().name() + " " + fact + " = " + place + "; if (" + fact + " != null && " + test + ") { " + then.get() + " }";
	}

	private String test(Test test, String fact) {
		if (test instanceof Test.AllOf all) {
			return all.tests().isEmpty() ? "true" : all.tests().stream().map(t -> test(t, fact)).collect(Collectors.joining(" && "));
		} else if (test instanceof Test.AnyOf any) {
			return any.tests().stream().map(t -> test(t, fact)).collect(Collectors.joining(" || ", "(", ")"));
		} else if (test instanceof Test.Bind bind) {
			variables.put(bind.variable(), fact + "." + bind.field().name());
			return "true";
		} else if (test instanceof Test.Compare compare) {
			String right = compare.right() instanceof Operand.Literal literal ? PlainClasses.literal(literal.value(), compare.field().domain())
					: bound((Operand.Bound) compare.right());
			return compare(fact + "." + compare.field().name(), compare.comparison(), right, compare.field().domain());
		} else if (test instanceof Test.Among among) {
			return among.values().stream().map(v -> compare(fact + "." + among.field().name(), Comparison.EQUAL,
					PlainClasses.literal(v, among.field().domain()), among.field().domain())).collect(Collectors.joining(" || ", among.among() ? "(" : "!(", ")"));
		} else if (test instanceof Test.Matches matches) {
			String name = "PATTERN" + patterns.size();
			patterns.add("\tstatic final java.util.regex.Pattern " + name + " = java.util.regex.Pattern.compile("
					+ PlainClasses.quoted(matches.expression().pattern()) + ");\n");
			return name + ".matcher(" + fact + "." + matches.field().name() + ").matches()";
		}
		throw new IllegalArgumentException("plain Java cannot ask whether something is unknown: " + test);
	}

	private static String compare(String left, Comparison comparison, String right, Domain domain) {
		if (domain instanceof Domain.Words) {
			return (comparison == Comparison.NOT_EQUAL ? "!" : "") + left + ".equals(" + right + ")";
		}
		return left + " " + comparison.sign() + " " + right;
	}

	private String bound(Operand.Bound bound) {
		return variables.get(bound.variable()) + (bound.ofFact() ? "." + bound.field().name() : "");
	}
}
