package org.setwright.workbench.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LinesTest {
	@Test
	void breaksBetweenWords() {
		assertEquals("x".repeat(40) + "\n" + "y".repeat(40), Lines.broken("x".repeat(40) + " " + "y".repeat(40)));
	}

	@Test
	void keepsWhatFitsAndTheLinesThatAreThere() {
		assertEquals("one two\n\nthree", Lines.broken("one two\n\nthree"));
	}

	@Test
	void leavesALongWordWhole() {
		assertEquals("z".repeat(100) + "\nend", Lines.broken("z".repeat(100) + " end"));
	}
}
