package org.setwright.engine.running;

import java.util.List;
import java.util.stream.Collectors;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;

/**
 * Writes checked rules as the DRL the engine runs. Unknown answers are null there, so every test is written in one of
 * two forms: <em>certain</em> (false of an unknown answer) where a condition has to hold, and <em>possible</em> (true of
 * an unknown answer) where it must be ruled out, that is below {@code not}. That gives Kleene's three-valued logic
 * inside a two-valued engine. A rule that makes a finding is written twice, the second time in possible form, so that
 * {@code not Finding( ... )} is not taken for granted while the finding is held open.
 *
 * <p>
 * Nothing a person wrote is copied: each word is looked up or quoted, so no text can turn into code.
 */
final class DrlWriter {
	static final String PACKAGE = "setwright";
	/** What the name of a rule in its possible form ends in. */
	static final String PERHAPS = "?";

	private final StringBuilder out = new StringBuilder();

	private DrlWriter() {
	}

	/** @param asked the kinds of fact some rule asks for @return the whole package for {@code rules}; rule number n is named "n", its possible form "n?" */
	static String write(List<Rule> rules, FindingOrder order, List<FactKind> asked) {
		DrlWriter writer = new DrlWriter();
		writer.head(asked);
		for (int i = 0; i < rules.size(); i++) {
			Rule rule = rules.get(i);
			writer.rule(i, "", order.level(rule), rule, true, "fired");
			if (!rule.finds().isEmpty()) {
				writer.rule(i, PERHAPS, order.level(rule), rule, false, "perhaps");
			}
		}
		return writer.out.toString();
	}

	private void head(List<FactKind> asked) {
		out.append("package ").append(PACKAGE).append("\ndialect \"mvel\"\nimport ").append(Desk.class.getName())
				.append("\nimport ").append(Found.class.getName()).append("\nglobal Desk desk\n");
		for (FactKind kind : asked) {
			out.append("declare ").append(type(kind)).append("\n\tphantom : boolean\n");
			kind.fields().forEach(f -> out.append('\t').append(field(f)).append(" : ").append(javaType(f)).append('\n'));
			out.append("end\n");
		}
	}

	private void rule(int number, String mark, int level, Rule rule, boolean certain, String report) {
		out.append("rule \"").append(number).append(mark).append("\" salience ").append(-level).append("\nwhen\n");
		ConditionWriter conditions = new ConditionWriter(rule);
		for (Condition condition : rule.when()) {
			out.append('\t').append(conditions.write(condition, certain)).append('\n');
		}
		out.append("then\n\tdesk.").append(report).append("( ").append(number).append(" );\nend\n");
	}

	/** @return the engine's name for facts of {@code kind} */
	static String type(FactKind kind) {
		return "K_" + kind.name();
	}

	/** @return the engine's name for {@code field} */
	static String field(Field field) {
		return "v_" + field.name();
	}

	/** @return {@code value}, a {@code Value.plain()}, as the engine reads it */
	static String literal(Object value) {
		if (value instanceof String text) {
			return quoted(text);
		} else if (value instanceof Double number) {
			String digits = java.math.BigDecimal.valueOf(number).toPlainString();
			return digits.indexOf('.') < 0 ? digits + ".0" : digits;
		}
		return value.toString();
	}

	/** @return {@code text} in quotes; nothing in it can end them */
	static String quoted(String text) {
		return text.chars().mapToObj(c -> c >= 32 && c < 127 && c != '"' && c != '\\' ? String.valueOf((char) c)
				: String.format("\\u%04X", c)).collect(Collectors.joining("", "\"", "\""));
	}

	private static String javaType(Field field) {
		Domain domain = field.domain();
		return domain instanceof Domain.Whole ? "Integer"
				: domain instanceof Domain.Measure ? "Double" : domain instanceof Domain.YesNo ? "Boolean" : "String";
	}
}
