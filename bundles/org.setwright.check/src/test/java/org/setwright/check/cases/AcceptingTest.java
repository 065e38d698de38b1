package org.setwright.check.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobCase;
import org.setwright.book.JobReader;
import org.setwright.book.JobWriter;
import org.setwright.check.Sample;
import org.setwright.engine.Edition;

/** What came becomes what is expected, and the file says who said so. */
class AcceptingTest {
	private static final Edition EDITION = Sample.edition();
	private static final Accepting DANA = new Accepting(LocalDate.of(2026, 11, 25), " Dana  Reyes ", "It is\nright.");
	private static final String JOB = "job: A # mine\npump: { size: 3 }\nlamp: { lit: yes, bright: yes }\nexpect:\n  %s   # agreed\n";

	@ParameterizedTest(name = "{0} becomes {1}")
	@CsvSource(delimiter = '|', textBlock = """
			speed: 4                        | speed: 3                          | 4                  | 3
			speed: 9 within 2               | speed: 3 within 2                 | 9 within 2         | 3 within 2
			speed: gap                      | speed: 3                          | gap                | 3
			speed: { by: Nobody }           | speed: { by: By size }            | decided by Nobody  | decided by By size
			speed: { is: 4, by: By size }   | speed: { is: 3, by: By size }     | 4, by By size      | 3, by By size
			sign: { is: two, by: table signs } | sign: { is: three, by: table signs } | two, by table signs | three, by table signs
			colour: red                     | colour: dispute                   | red                | dispute
			cautions: [note]                | no cautions: [note]               | raised             | not raised
			no cautions: stop               | cautions: [stop]                  | not raised         | raised
			start-up: heating               | no start-up: heating              | needed             | not needed
			no start-up: { any: it rings }  | start-up: [any: it rings]         | not needed         | needed
			perhaps start-up: any           | start-up: any                     | perhaps needed     | needed
			no start-up: any other          | { start-up: [{ by: Make it ring }], no start-up: any other } | not needed | needed
			findings: pump                  | no findings: pump                 | found              | not found
			no findings: any                | findings: any                     | not found          | found
			""")
	void whatComesBecomesWhatIsExpected(String before, String after, String was, String now) throws Exception {
		String text = accepted(JOB.formatted(before));
		assertTrue(text.startsWith("job: A # mine\npump: { size: 3 }\n"), text);
		assertTrue(text.contains("# agreed"), text);
		JobCase job = job(text);
		assertEquals(job(JOB.formatted(after)).expected().values().stream().map(JobCase.Expectation::text).toList(),
				job.expected().values().stream().map(JobCase.Expectation::text).toList());
		assertEquals(job(JOB.formatted(after)).items().stream().map(i -> i.list() + i.text()).sorted().toList(),
				job.items().stream().map(i -> i.list() + i.text()).sorted().toList());
		assertEquals(List.of(was + " > " + now + " on 2026-11-25 by Dana Reyes because It is right."), job.accepted().stream()
				.map(a -> a.was() + " > " + a.now() + " on " + a.on() + " by " + a.by() + " because " + a.because()).toList());
		assertTrue(check(job).allMet());
		assertEquals(text, accepted(text), "once accepted, there is nothing left to accept");
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource(delimiter = '|', textBlock = """
			pump: none        | alarm: 60 °F | not needed
			pump: { size: 1 } | alarm: 60 °F | gap
			lamp: none        | alarm: 60 °F | not set
			""")
	void thatNoValueComesIsAcceptedToo(String fact, String expectation, String now) throws Exception {
		JobCase job = job(accepted("job: A\n" + fact + "\nexpect: { " + expectation + " }\n"));
		assertEquals(now, job.expected().values().iterator().next().text());
		assertTrue(check(job).allMet());
	}

	@Test
	void aSettingThatWasNotAskedIsAskedFromThenOn() {
		Point speed = CheckedJob.of(job("job: A\npump: { size: 3 }\n"), Sample.CATALOGUE.setting("SPEED").orElseThrow(),
				EDITION.run(job("job: A\npump: { size: 3 }\n").job()).setting(Sample.CATALOGUE.setting("SPEED").orElseThrow()));
		assertEquals(2, DANA.edits(speed).size());
		assertEquals("3", Accepting.becomes(speed));
	}

	@Test
	void nobodyAcceptsWithoutANameAndAReason() {
		assertThrows(IllegalArgumentException.class, () -> new Accepting(LocalDate.EPOCH, " ", "x"));
		assertThrows(IllegalArgumentException.class, () -> new Accepting(LocalDate.EPOCH, "x", "\n"));
	}

	private static String accepted(String text) throws Exception {
		return new JobWriter(Sample.CATALOGUE).editAll("jobs/0.yaml", text,
				check(job(text)).notMet().stream().flatMap(p -> DANA.edits(p).stream()).toList());
	}

	private static CheckedJob check(JobCase job) {
		return CheckedJob.of(job, EDITION.run(job.job()));
	}

	private static JobCase job(String text) {
		return Optional.of(JobReader.read("jobs/0.yaml", text, Sample.CATALOGUE)).filter(r -> r.sound()).orElseThrow(() -> new AssertionError(text)).job();
	}
}
