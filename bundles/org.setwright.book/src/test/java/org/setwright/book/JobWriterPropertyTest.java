package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Catalogue;

class JobWriterPropertyTest {
	private static final int TRIES = 600;

	@ParameterizedTest
	@ValueSource(strings = { "sample", "trade" })
	void aFreshFileReadsBackAsTheSameJob(String catalogue) throws JobNotWritten {
		RandomJobs jobs = new RandomJobs(1, of(catalogue));
		JobWriter writer = new JobWriter(of(catalogue));
		for (int i = 0; i < TRIES / 5; i++) {
			JobCase job = jobs.job();
			String text = writer.write(job);
			JobText read = JobReader.read(RandomJobs.PATH, text, of(catalogue));
			assertEquals(List.of(), read.problems(), text);
			assertSame(job, read.job(), text);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "sample", "trade" })
	void aFileWrittenByHandIsReadWhateverItsStyle(String catalogue) {
		RandomJobs jobs = new RandomJobs(2, of(catalogue));
		for (int i = 0; i < TRIES / 5; i++) {
			JobCase job = jobs.job();
			String text = new RandomHand(jobs).write(job);
			JobText read = JobReader.read(RandomJobs.PATH, text, of(catalogue));
			assertEquals(List.of(), read.problems(), text);
			assertSame(job, read.job(), text);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "sample", "trade" })
	void everyEditSaysWhatWasWantedAndKeepsEveryComment(String catalogue) {
		RandomJobs jobs = new RandomJobs(3, of(catalogue));
		JobWriter writer = new JobWriter(of(catalogue));
		List<String> refused = new ArrayList<>();
		for (int i = 0; i < TRIES; i++) {
			RandomHand hand = new RandomHand(jobs);
			JobCase job = jobs.job();
			String text = hand.write(job);
			JobEdit edit = jobs.edit(job);
			try {
				String edited = writer.edit(RandomJobs.PATH, text, edit);
				String all = "--- " + edit + "\n" + text + "\n--- became\n" + edited;
				assertSame(EditedJob.of(job, edit), JobReader.read(RandomJobs.PATH, edited, of(catalogue)).job(), all);
				hand.comments().forEach(c -> assertEquals(1, count(edited, c), c + "\n" + all));
				assertTrue(changedLines(text, edited) <= mostChangedLines(edit), all);
			} catch (JobNotWritten e) {
				refused.add(e.getMessage() + "\n--- " + edit + "\n" + text);
			}
		}
		assertEquals(0, refused.size(), () -> refused.size() + " refused, first:\n" + refused.get(0));
	}

	/** An answer, a name or an expectation touches its own line, and the list of what is not fitted. */
	private static int mostChangedLines(JobEdit edit) {
		boolean one = edit instanceof JobEdit.Answered || edit instanceof JobEdit.Named || edit instanceof JobEdit.Expected || edit instanceof JobEdit.Added;
		return one ? 3 : Integer.MAX_VALUE;
	}

	/** How many lines of {@code before} are not in {@code after}. */
	private static long changedLines(String before, String after) {
		List<String> left = new ArrayList<>(after.lines().toList());
		return before.lines().filter(line -> !left.remove(line)).count();
	}

	private static int count(String text, String part) {
		return (text.length() - text.replace(part, "").length()) / part.length();
	}

	private static void assertSame(JobCase wanted, JobCase read, String text) {
		assertEquals(wanted.name(), read.name(), text);
		assertEquals(wanted.notes().stripTrailing(), read.notes(), text);
		assertTrue(EditedJob.same(EditedJob.of(wanted, new JobEdit.Noted(wanted.notes())), read), () -> text + "\n--- wanted " + wanted.job() + "\n--- read " + read.job());
	}

	private static Catalogue of(String name) {
		return name.equals("trade") ? Trade.catalogue() : Sample.CATALOGUE;
	}
}
