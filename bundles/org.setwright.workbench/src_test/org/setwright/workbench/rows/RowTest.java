package org.setwright.workbench.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.look.Icon;

class RowTest {
	@Test
	void aLineIsShownForItselfOrForWhatIsBelowIt() {
		Row below = line("the condition", true);
		Row other = line("another", false);
		Row rule = new Row(Icon.RULE, List.of("A rule", "9"), true, Optional.empty(), List.of(below, other));
		assertTrue(rule.shown(true, "CONDITION the"));
		assertFalse(rule.shown(true, "condition rule"));
		assertEquals(List.of(below), rule.below(false, "condition"));
		assertEquals(List.of(below, other), rule.below(false, "rule"), "found itself");
		assertEquals(List.of(below), rule.below(true, ""));
		assertFalse(other.shown(true, ""));
	}

	@Test
	void numbersAreSortedBySizeAndWordsByLetters() {
		assertTrue(line("9", false).compare(line("10", false), 0) < 0);
		assertTrue(line("a9", false).compare(line("B", false), 0) < 0);
		assertTrue(line("9", false).compare(line("9a", false), 0) < 0);
	}

	@Test
	void aLineThatIsCountedAnewEndsAsBefore() {
		assertEquals(List.of("A rule", "rules/a.drl"), new Row(Icon.RULE, List.of("A rule", "9", "rules/a.drl"), "something").ends());
		assertEquals(List.of(), new Row(Icon.RULE, List.of(), "something").ends());
	}

	private static Row line(String cell, boolean lacking) {
		return new Row(Icon.RULE, List.of(cell), lacking, Optional.empty(), List.of());
	}
}
