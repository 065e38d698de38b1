package org.setwright.command.answer;

import org.setwright.engine.language.Rule;

/** How a rule is named to people. */
public final class RuleText {
	private RuleText() {
	}

	/** @return a rule's name in quotes; a table row's as it is */
	public static String name(Rule rule) {
		return rule.at().file().endsWith(".csv") ? rule.name() : '"' + rule.name() + '"';
	}

	/** @return for example {@code table changeover-by-maker, row 1 (maker's instructions)} */
	public static String nameAndAuthority(Rule rule) {
		return name(rule) + " (" + rule.authority().label() + ")";
	}

	/** @return a rule's name in quotes; for a row of a table, the table */
	public static String origin(Rule rule) {
		return rule.at().file().endsWith(".csv") ? rule.name().replaceFirst(", row \\d+$", "") : name(rule);
	}

	/** @return why the rule says what it says, and where that comes from */
	public static String because(Rule rule) {
		return rule.because() + " Source: " + rule.source() + ".";
	}
}
