package org.setwright.workbench.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.RowTree.Manner;

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
	void aLineThatCountsAnewIsTheSameLineWhereThingsAreCountedAndAnotherWhereTheyAreRead() {
		Row before = new Row(Icon.RULE, List.of("A rule", "9", "rules/a.drl"), Optional.empty(), List.of());
		Row after = new Row(Icon.RULE, List.of("A rule", "10", "rules/a.drl"), Optional.empty(), List.of());
		Row elsewhere = new Row(Icon.RULE, List.of("A rule", "9", "rules/b.drl"), Optional.empty(), List.of());
		SameRow counted = new SameRow(Manner.COUNTED);
		assertTrue(counted.equals(before, after));
		assertEquals(counted.hashCode(before), counted.hashCode(after));
		assertFalse(counted.equals(before, elsewhere));
		assertFalse(new SameRow(Manner.READ).equals(before, after));
		assertTrue(new SameRow(Manner.READ).equals(before, new Row(Icon.GAP, before.cells(), "something")));
	}

	private static Row line(String cell, boolean lacking) {
		return new Row(Icon.RULE, List.of(cell), lacking, Optional.empty(), List.of());
	}
}
