package org.setwright.check.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.check.Progress;
import org.setwright.check.Sample;
import org.setwright.engine.Edition;

class CaseCheckTest {
	private static final Edition EDITION = Sample.edition();
	/** A pump of size 3 (speed 3, alarm 62 °F = 16.667 °C, sign three, a caution), and a lamp in dispute. */
	private static final String JOB = "job: A\npump: { size: 3 }\nlamp: { lit: yes, bright: yes }\n";

	@ParameterizedTest(name = "{0} is {1}")
	@CsvSource(delimiter = '|', textBlock = """
			speed: 3                                | met
			speed: 4                                | not met
			speed: 4 within 1                       | met
			speed: 5 within 1                       | not met
			speed: gap                              | not met
			speed: not set                          | not met
			speed: { by: By size }                  | met
			speed: { is: 3, by: By size }           | met
			speed: { is: 4, by: By size }           | not met
			speed: { is: 4 within 2, by: By size }  | met
			speed: { by: By siz }                   | not met
			alarm: 62 °F                            | met
			alarm: 60 °F within 2 F°                | met
			alarm: 60 °F within 1.9 F°              | not met
			alarm: 64 °F within 1.2 C°              | met
			alarm: 64 °F within 1.1 C°              | not met
			alarm: 16.6667 °C within 0.1 C°         | met
			alarm: { by: "table signs" }            | not met
			sign: { by: "table signs" }             | met
			sign: { by: "table signs, row 1" }      | met
			sign: { by: "table signs, row 2" }      | not met
			sign: { by: "table sign" }              | not met
			colour: dispute                         | met
			colour: not set                         | met
			colour: red                             | not met
			colour: { by: Red }                     | not met
			colour: gap                             | not met
			cautions: stop                          | met
			cautions: any                           | met
			cautions: note                          | not met
			cautions: { stop: mind the heat }       | met
			cautions: { any: IT BURNS }             | met
			cautions: { note: it burns }            | not met
			cautions: { stop: it freezes }          | not met
			no cautions: note                       | met
			no cautions: stop                       | not met
			no cautions: { stop: it freezes }       | met
			no cautions: any                        | not met
			no cautions: any other                  | not met
			""")
	void eachKindOfExpectation(String expectation, String standing) {
		CheckedJob job = check(JOB + "expect:\n  " + expectation + "\n").jobs().get(0);
		assertEquals(standing, job.asked().get(0).standing().word());
		assertEquals(standing.equals("met"), job.allMet());
	}

	@ParameterizedTest(name = "{0} with {1} is {2}")
	@CsvSource(delimiter = '|', textBlock = """
			alarm: gap          | pump: { size: 1 } | met
			alarm: not set      | pump: { size: 1 } | met
			alarm: not needed   | pump: { size: 1 } | not met
			alarm: gap          | pump: none        | not met
			alarm: not needed   | pump: none        | met
			alarm: not set      | pump: none        | met
			alarm: not needed   | lamp: none        | not met
			alarm: not set      | lamp: none        | met
			no cautions: any    | pump: { size: 1 } | met
			cautions: any       | pump: { size: 1 } | not met
			""")
	void withoutAValue(String expectation, String fact, String standing) {
		assertEquals(standing, check("job: A\n" + fact + "\nexpect: { " + expectation + " }\n").jobs().get(0).asked().get(0).standing().word());
	}

	@Test
	void whatIsNotAskedIsListedAfterWhatIs() {
		CheckedJob job = check(JOB + "expect:\n  alarm: 1 °F\n  cautions: note\n  sign: not needed\n").jobs().get(0);
		assertEquals("alarm: expected 1 °F, came to 62 °F\nsign: expected not needed, came to three\n"
				+ "caution note: expected raised, came to not raised\nspeed: came to 3; nothing is expected\n"
				+ "colour: came to dispute: red or blue; nothing is expected",
				job.points().stream().map(p -> p.what() + ": " + p.sentence()).collect(Collectors.joining("\n")));
		assertEquals(List.of(3L, 0L, 2L), List.of(job.count(Standing.NOT_MET), job.count(Standing.MET), job.count(Standing.NOT_ASKED)));
		assertEquals("jobs/0.yaml:5:10", job.points().get(0).at().toString());
	}

	@Test
	void noOtherCautionMeansNoneButThoseExpected() {
		String expect = JOB + "expect:\n  cautions: { stop: it burns }\n  no cautions: any other\n";
		assertTrue(check(expect).jobs().get(0).allMet());
		CheckedJob surprised = check(expect.replace("  cautions: { stop: it burns }\n", "")).jobs().get(0);
		List<JobEdit> accepted = new Accepting(LocalDate.of(2026, 11, 25), "Dana", "It does burn.").edits(surprised.notMet().get(0));
		assertTrue(accepted.get(0) instanceof JobEdit.CautionExpected now && now.caution().appears() && now.caution().text().contains("it burns"));
	}

	@Test
	void aRuleThatDecidesIsNamedBesideTheOneExpected() {
		assertEquals("expected 3, by Another, came to 3, by By size", check(JOB + "expect:\n  speed: { is: 3, by: Another }\n").jobs().get(0).asked().get(0).sentence());
	}

	@Test
	void manyJobsSideBySideComeToTheSameInTheSameOrder() {
		String[] jobs = IntStream.range(0, 60).mapToObj(i -> "job: J" + i + "\npump: { size: " + i % 10 + " }\nexpect: { speed: 3 }\n").toArray(String[]::new);
		List<JobCase> cases = Sample.book(jobs).jobs();
		CaseCheck alone = CaseCheck.of(EDITION, cases, Progress.UNWATCHED, false).orElseThrow();
		assertEquals(alone, CaseCheck.of(EDITION, cases, Progress.UNWATCHED, true).orElseThrow());
		assertEquals(cases, alone.jobs().stream().map(CheckedJob::job).toList());
		assertEquals(6, alone.count(Standing.MET));
		assertEquals(54, alone.amiss().size());
		assertFalse(alone.allMet());
	}

	@Test
	void progressIsToldAndCancellingEndsWithoutAResult() {
		List<JobCase> cases = Sample.book("job: A\n", "job: B\n", "job: C\n").jobs();
		Watching all = new Watching(9);
		assertTrue(CaseCheck.of(EDITION, cases, all, false).isPresent());
		assertEquals(List.of(0, 1, 2, 3), all.told);
		Watching impatient = new Watching(2);
		assertEquals(Optional.empty(), CaseCheck.of(EDITION, cases, impatient, false));
		assertEquals(List.of(0, 1, 2), impatient.told);
	}

	/** Cancels after some jobs. */
	private static final class Watching implements Progress {
		private final List<Integer> told = Collections.synchronizedList(new ArrayList<>());
		private final int patience;

		Watching(int patience) {
			this.patience = patience;
		}

		@Override
		public void done(int done, int all) {
			told.add(done);
		}

		@Override
		public boolean cancelled() {
			return told.get(told.size() - 1) >= patience;
		}
	}

	private static CaseCheck check(String... jobs) {
		return CaseCheck.of(EDITION, Sample.book(jobs).jobs(), Progress.UNWATCHED, true).orElseThrow();
	}
}
