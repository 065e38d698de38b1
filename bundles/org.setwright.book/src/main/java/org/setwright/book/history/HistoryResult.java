package org.setwright.book.history;

import java.util.List;
import org.setwright.book.Problem;

/**
 * What came of an import or export.
 *
 * @param jobs how many jobs were read, and written when all went well
 * @param problems the first of them, by row; not empty means that nothing was written
 * @param more how many problems are not listed
 * @param cancelled whether somebody ended it; nothing was written then either
 */
public record HistoryResult(int jobs, List<Problem> problems, int more, boolean cancelled) {
	/** More problems than these are only counted. */
	public static final int MOST_LISTED = 100;

	public HistoryResult {
		problems = List.copyOf(problems);
	}

	/** Somebody who watches and may end it. */
	public interface Watcher {
		/** Told after every job. @param jobs so far @param all how many there are; 0 when nobody counted @return whether to go on */
		boolean goOn(int jobs, int all);
	}
}
