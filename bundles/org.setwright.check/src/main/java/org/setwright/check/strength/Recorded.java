package org.setwright.check.strength;

import java.time.LocalDate;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobReader;
import org.setwright.book.JobText;
import org.setwright.check.cases.CheckedJob;
import org.setwright.engine.Edition;

/**
 * A job that notices a mistake, ready to be saved in the book. What it expects is what the rules say, and its notes say that
 * this was recorded.
 *
 * @param file a name for the file, without folder
 * @param text of the file
 */
public record Recorded(String file, String text) {
	/**
	 * @param edition the rules as they are now
	 * @param on the day
	 * @return empty when the job, run in full and as it reads from its file, does not meet its own expectations, or would not
	 *         notice the mistake
	 * @throws JobNotWritten when it holds something that no file can hold
	 */
	public static Optional<Recorded> of(Catching catching, Edition edition, LocalDate on) throws JobNotWritten {
		String text = catching.recorded(edition.catalogue(), on);
		JobText read = JobReader.read("jobs/" + catching.file(), text, edition.catalogue());
		return read.sound() && meets(read.job(), edition) && notices(read.job(), catching.mistake(), edition)
				? Optional.of(new Recorded(catching.file(), text)) : Optional.empty();
	}

	private static boolean meets(JobCase job, Edition edition) {
		return job.expectations() > 0 && CheckedJob.of(job, edition.run(job.job())).allMet();
	}

	/** The rule may have been read anew meanwhile. */
	private static boolean notices(JobCase job, Mistake mistake, Edition edition) {
		return edition.rules().stream().filter(r -> r == mistake.rule() || r.equals(mistake.rule())).findFirst()
				.map(rule -> new Mistake(rule, mistake.kind(), mistake.sentence(), mistake.at(), mistake.instead()))
				.filter(m -> !CheckedJob.of(job, edition.rehearse(job.job()).under(Strength.amendment(edition, m)).outcome()).allMet()).isPresent();
	}
}
