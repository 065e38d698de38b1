package org.setwright.command.setup;

import java.util.List;
import java.util.stream.Collectors;
import org.setwright.command.answer.RuleText;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.JobField;

/** The settings of one job under their headings: value, the rule behind it, and whatever is not plain sailing. */
record SettingsText(Page page, boolean reasons) {
	private static final int LONGEST_LABEL = 30;
	private static final int VALUE = 24;
	private static final int DETAIL = 6;
	/** With less than this left for the rule, it goes on a line of its own, not far from the left. */
	private static final int RULE_BESIDE_VALUE = 44;

	void print(List<SettingOutcome> settings) {
		int label = Math.min(LONGEST_LABEL, settings.stream().mapToInt(s -> s.setting().label().length()).max().orElse(0));
		String group = "";
		for (SettingOutcome outcome : settings) {
			if (!outcome.setting().group().equals(group)) {
				group = outcome.setting().group();
				page.blank().line(0, Style.STRONG, group);
			}
			setting(label, outcome);
		}
	}

	private void setting(int label, SettingOutcome outcome) {
		String name = outcome.setting().label();
		switch (outcome.state()) {
			case SETTLED -> {
				settled(label, name, outcome);
			}
			case DISPUTED -> {
				first(label, name, Style.ALARM, "DISPUTED: a person has to decide");
				outcome.deciding().forEach(p -> below(label, Style.PLAIN, p.value().text() + ", says " + RuleText.nameAndAuthority(p.rule())));
			}
			case GAP -> first(label, name, Style.ALARM, "GAP: needed, and no rule gives a value");
			case PERHAPS -> first(label, name, Style.ATTENTION, "PERHAPS NEEDED: no rule gives a value");
		}
		weaker(label, outcome);
		heldOpen(label, outcome);
	}

	private void settled(int label, String name, SettingOutcome outcome) {
		String value = outcome.value().orElseThrow().text();
		String rules = outcome.deciding().stream().map(p -> RuleText.nameAndAuthority(p.rule())).distinct().collect(Collectors.joining("; "));
		if (value.length() <= VALUE && isWide(label)) {
			page.row(2, new Cell(label, Style.PLAIN, name), new Cell(VALUE, Style.STRONG, value), Cell.rest(Style.PLAIN, rules));
		} else {
			first(label, name, Style.STRONG, value);
			below(label, Style.PLAIN, rules);
		}
		if (reasons) {
			outcome.deciding().stream().map(Proposal::rule).distinct().forEach(r -> below(label, Style.QUIET, RuleText.because(r)));
		}
	}

	private void weaker(int label, SettingOutcome outcome) {
		outcome.agreeing().forEach(p -> below(label, Style.QUIET, "and so says " + RuleText.nameAndAuthority(p.rule())));
		outcome.outranked().forEach(p -> below(label, Style.QUIET,
				"outranks " + p.value().text() + ", which " + RuleText.nameAndAuthority(p.rule()) + " says"));
	}

	private void heldOpen(int label, SettingOutcome outcome) {
		if (!outcome.heldOpen().isEmpty()) {
			String unknowns = outcome.heldOpen().stream().map(HeldOpen::by).flatMap(by -> by.stream().map(JobField::label)).distinct().sorted()
					.collect(Collectors.joining(", "));
			below(label, Style.ATTENTION, (outcome.proposals().isEmpty() ? "open until known: " : "may still change, once known: ") + unknowns);
		}
	}

	private void first(int label, String name, Style style, String words) {
		page.row(2, new Cell(label, Style.PLAIN, name), Cell.rest(style, words));
	}

	private void below(int label, Style style, String words) {
		page.row(isWide(label) ? 2 + label + 2 : DETAIL, Cell.rest(style, words));
	}

	private boolean isWide(int label) {
		return page.width() - label - VALUE - 6 >= RULE_BESIDE_VALUE;
	}
}
