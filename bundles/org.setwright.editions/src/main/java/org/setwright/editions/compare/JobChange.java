package org.setwright.editions.compare;

import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.book.JobText;

/**
 * What became of one job case. Immutable.
 *
 * @param before empty when it is new
 * @param after empty when it is gone
 * @param answers whether what is known of the job is different
 * @param expected whether what is expected of it is different
 */
public record JobChange(Optional<JobText> before, Optional<JobText> after, boolean answers, boolean expected) {

	static JobChange of(Optional<JobText> before, Optional<JobText> after) {
		if (before.isEmpty() || after.isEmpty()) {
			return new JobChange(before, after, true, true);
		}
		JobCase was = before.get().job();
		JobCase is = after.get().job();
		return new JobChange(before, after, !was.job().equals(is.job()) || before.get().sound() != after.get().sound(), !expectations(was)
				.equals(expectations(is)));
	}

	private static String expectations(JobCase job) {
		StringBuilder text = new StringBuilder();
		job.expected().forEach((setting, expectation) -> text.append(setting.id()).append(": ").append(expectation.text()).append('\n'));
		job.items().forEach(i -> text.append(i.list().key()).append(": ").append(i.text()).append('\n'));
		return text.toString();
	}

	/** @return the job as it is now, or as it was when it is gone */
	public JobCase job() {
		return after.or(() -> before).orElseThrow().job();
	}

	/** @return whether nothing but words or its file's name changed */
	public boolean wordsOnly() {
		return !answers && !expected;
	}

	/** @return what became of it, for people */
	public String what() {
		if (before.isEmpty()) {
			return "added";
		} else if (after.isEmpty()) {
			return "removed";
		}
		String changed = answers && expected ? "answers and expectations changed" : answers ? "answers changed" : expected ? "expectations changed" : "";
		String moved = before.get().job().path().equals(after.get().job().path()) ? "" : "moved from " + before.get().job().path();
		return changed.isEmpty() ? moved.isEmpty() ? "words changed" : moved : moved.isEmpty() ? changed : changed + "; " + moved;
	}
}
