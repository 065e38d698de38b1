package org.setwright.workbench.rows;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BranchesTest {
	private record Heading(List<String> lines) {
	}

	private final Branches<Heading> branches = new Branches<>(Heading.class, Heading::lines);

	@Test
	void linesAreBelowTheirHeading() {
		Heading heading = new Heading(List.of("one", "two"));
		assertArrayEquals(new Object[] { heading }, branches.getElements(List.of(heading)));
		assertTrue(branches.hasChildren(heading));
		assertArrayEquals(new Object[] { "one", "two" }, branches.getChildren(heading));
	}

	@Test
	void nothingIsBelowAnEmptyHeadingOrALine() {
		assertFalse(branches.hasChildren(new Heading(List.of())));
		assertFalse(branches.hasChildren("one"));
		assertArrayEquals(new Object[0], branches.getChildren("one"));
	}
}
