package org.setwright.workbench.rows;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.look.Icon;

class SameByTest {
	private final Row before = row("A rule", "9", "rules/a.drl");
	private final Row counted = row("A rule", "10", "rules/a.drl");
	private final Row elsewhere = row("A rule", "9", "rules/b.drl");

	@Test
	void aLineIsTheSameByItsKeyOnly() {
		SameBy<Row> ends = new SameBy<>(Row.class, Row::ends);
		assertTrue(ends.equals(before, counted));
		assertEquals(ends.hashCode(before), ends.hashCode(counted));
		assertFalse(ends.equals(before, elsewhere));
		assertFalse(new SameBy<>(Row.class, Row::cells).equals(before, counted));
	}

	@Test
	void anythingElseIsTheSameWhenItIsEqual() {
		SameBy<Row> ends = new SameBy<>(Row.class, Row::ends);
		assertTrue(ends.equals(List.of(before), List.of(before)));
		assertFalse(ends.equals(List.of(before), List.of(counted)));
		assertFalse(ends.equals(before, List.of(before)));
	}

	private static Row row(String... cells) {
		return new Row(Icon.RULE, List.of(cells), Optional.empty(), List.of());
	}
}
