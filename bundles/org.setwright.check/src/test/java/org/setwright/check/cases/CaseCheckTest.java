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
			start-up: safety devices                | met
			start-up: any                           | met
			start-up: heating                       | not met
			start-up: { safety devices: IT RINGS }  | met
			start-up: { any: above 62 °F }          | met
			start-up: { any: '5.6 C°' }            | met
			start-up: { safety devices: it falls }  | not met
			start-up: { by: Make it ring }          | met
			start-up: { by: Make it }               | not met
			perhaps start-up: safety devices        | not met
			no start-up: heating                    | met
			no start-up: safety devices             | not met
			no start-up: any other                  | not met
			findings: pump that rings               | met
			findings: [PUMP_THAT_RINGS]             | met
			findings: any                           | met
			findings: pump                          | not met
			no findings: pump                       | met
			no findings: pump that rings            | not met
			no findings: any other                  | not met
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
			no start-up: any    | pump: { size: 1 } | met
			no findings: any    | pump: { size: 1 } | met
			start-up: any       | pump: fitted      | not met
			no start-up: any    | pump: fitted      | not met
			perhaps start-up: any | pump: fitted    | met
			no findings: any    | pump: fitted      | met
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
		assertTrue(accepted.get(0) instanceof JobEdit.ItemExpected now && now.item().list().appears() && now.item().text().contains("it burns"));
	}

	@Test
	void nothingElseMeansNothingButWhatIsExpected() {
		String expect = JOB + "expect:\n  start-up: { safety devices: it rings }\n  no start-up: any other\n  findings: pump that rings\n  no findings: any other\n";
		assertTrue(check(expect).jobs().get(0).allMet());
		CheckedJob surprised = check(expect.replace("  start-up: { safety devices: it rings }\n", "").replace("  findings: pump that rings\n", "")).jobs().get(0);
		assertEquals("no start-up check any other: expected not needed, came to safety devices: Warm it to 10 F° (5.6 C°) above 62 °F (16.7 °C).\n"
				+ "no finding any other: expected not found, came to pump that rings",
				surprised.notMet().stream().map(p -> p.what() + ": " + p.sentence()).collect(Collectors.joining("\n")));
		assertTrue(check(expect.replace("size: 3", "size: unknown").replace("start-up: { safety", "perhaps start-up: { safety").replace("  findings: pump that rings\n", ""))
				.jobs().get(0).allMet());
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource(delimiter = '|', textBlock = """
			no start-up: [by: Make it rin]   | jobs/0.yaml:5:17: There is no rule or table called "Make it rin". Write "Make it ring".
			no findings: pump that rang      | jobs/0.yaml:5:16: No rule finds "pump that rang". Write "pump that rings".
			sign: { by: table signs, row 7 } | jobs/0.yaml:5:9: There is no rule or table called "table signs, row 7". Write "table signs, row 1".
			sign: { by: table signs }        |
			no findings: [any, any other]    |
			""")
	void aNameThatNoRuleHasIsAWarning(String expectation, String warning) {
		var compiled = Edition.compile(Sample.book(JOB + "expect:\n  " + expectation.replace("table signs, row 7", "'table signs, row 7'") + "\n"));
		assertTrue(compiled.edition().isPresent());
		assertEquals(Optional.ofNullable(warning).map(List::of).orElse(List.of()), compiled.problems().stream().map(Object::toString).toList());
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
