package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Starts the benchmark of what reasons cost; run only when asked for, see DEVELOPERS.md. */
class BenchmarksTest {
	@Test
	void reasonsAreMeasuredAgainstRunsWithoutThem() {
		assertEquals(3, TracingCost.measure().size());
	}
}
