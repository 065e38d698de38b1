package org.setwright.command.opening;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;

import org.junit.jupiter.api.Test;

class HeadStartTest {
	@Test
	void itsRuleCompilesAndRuns() {
		assertDoesNotThrow(HeadStart::run);
	}
}
