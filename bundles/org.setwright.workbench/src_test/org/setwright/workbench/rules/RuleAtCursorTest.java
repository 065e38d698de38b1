package org.setwright.workbench.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.engine.language.Rule;
import org.setwright.workbench.desk.TestBook;

class RuleAtCursorTest {
	private static final List<Rule> RULES = TestBook.saved().rules().edition().orElseThrow().rules();

	@Test
	void everyLineOfARuleIsItsOwn() {
		for (Rule rule : RULES) {
			long lines = Math.max(1, rule.text().strip().lines().count());
			assertEquals(Optional.of(rule), RuleAtCursor.at(RULES, rule.at().file(), rule.at().line()), rule.name());
			assertEquals(Optional.of(rule), RuleAtCursor.at(RULES, rule.at().file(), (int) (rule.at().line() + lines - 1)), rule.name());
		}
	}

	@Test
	void outsideOfRulesThereIsNone() {
		assertEquals(Optional.empty(), RuleAtCursor.at(RULES, RULES.get(0).at().file(), 9999));
		assertEquals(Optional.empty(), RuleAtCursor.at(RULES, "rules/other.drl", 1));
	}
}
