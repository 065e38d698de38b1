package org.setwright.editions.impact;

import java.util.List;
import org.setwright.book.JobCase;

/**
 * What is different for one job. Immutable.
 *
 * @param job as it is after, or before when it is gone
 * @param standing whether the job is in both
 * @param differences settings first, then cautions, then start-up checks; may be empty
 * @param fault why it could not be run, a sentence; empty when it was
 */
public record JobImpact(JobCase job, Standing standing, List<Difference> differences, String fault) {
	public JobImpact {
		differences = List.copyOf(differences);
	}

	/** Whether a job is in both books. */
	public enum Standing {
		/** In both. */
		KEPT(""),
		/** Only in the later one; it was run with the same answers under both. */
		ADDED("new"),
		/** Only in the earlier one; it was run with the same answers under both. */
		REMOVED("no longer in the book");

		private final String words;

		Standing(String words) {
			this.words = words;
		}

		/** @return for people; empty when it is in both */
		public String words() {
			return words;
		}
	}
}
