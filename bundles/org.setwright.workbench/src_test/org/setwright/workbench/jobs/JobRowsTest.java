package org.setwright.workbench.jobs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.desk.TestBook;
import org.setwright.workbench.jobs.JobRow.Standing;

class JobRowsTest {
	private final List<JobRow> rows = JobRows.of(TestBook.saved());

	@Test
	void listsEveryJobByFile() {
		assertEquals(List.of(TestBook.LARCH_LANE, TestBook.MILL_ROAD, TestBook.QUARRY_HILL), rows.stream().map(JobRow::path).toList());
	}

	@Test
	void standsAsExpectedOnlyWhenEverythingCameTrue() {
		assertEquals(Standing.AS_EXPECTED, rows.get(0).standing());
		assertEquals("all 2 as expected", rows.get(0).words());
		assertEquals(Standing.DIFFERS, rows.get(2).standing());
		assertEquals("1 of 1 not as expected", rows.get(2).words());
	}

	@Test
	void findsAJobByItsNameOrByAnAnswer() {
		assertTrue(rows.get(0).matches("larch"));
		assertTrue(rows.get(0).matches("NORRVIK upstairs"));
		assertFalse(rows.get(1).matches("norrvik"));
		assertTrue(rows.get(2).matches("plate"), "notes are searched");
		assertTrue(rows.get(2).matches("  "));
	}

	@Test
	void aFileThatCannotBeReadIsListedAllTheSame() {
		Evaluation typed = TestBook.typing(TestBook.LARCH_LANE, "job: Larch Lane 14\nheat: 3\n");
		JobRow row = JobRows.of(typed).get(0);
		assertEquals(Standing.DOES_NOT_RUN, row.standing());
		assertEquals("larch-lane-14.yaml", row.name());
		assertEquals("mistake in its file", row.words());
	}

	@Test
	void nothingRunsWithAMistakeInTheRules() {
		Evaluation typed = TestBook.typing("rules/stages.drl", "rule");
		assertTrue(JobRows.of(typed).stream().allMatch(r -> r.standing() == Standing.DOES_NOT_RUN && r.words().equals("mistake in the rules")));
	}

	@Test
	void aJobWithoutExpectationsIsNeitherGoodNorBad() {
		Evaluation typed = TestBook.typing(TestBook.QUARRY_HILL, "job: Quarry Hill 8\n");
		assertEquals(Standing.NOTHING_EXPECTED, JobRows.of(typed).get(2).standing());
	}
}
