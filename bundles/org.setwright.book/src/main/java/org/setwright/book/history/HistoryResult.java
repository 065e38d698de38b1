package org.setwright.book.history;

import java.util.List;
import org.setwright.book.Problem;

/**
 * What came of an import or export.
 *
 * @param jobs how many jobs were read, and written when all went well
 * @param faults the first of them, by row; not empty means that nothing was written
 * @param more how many faults are not listed
 * @param cancelled whether somebody ended it; nothing was written then either
 */
public record HistoryResult(int jobs, List<Fault> faults, int more, boolean cancelled) {
	/** More faults than these are only counted. */
	public static final int MOST_LISTED = 100;

	public HistoryResult {
		faults = List.copyOf(faults);
	}

	/** @return that nothing was read, because of {@code problems} */
	public static HistoryResult refused(List<Problem> problems) {
		return new HistoryResult(0, problems.stream().map(Fault::of).toList(), 0, false);
	}

	/** @return the faults that are listed, as problems of the file */
	public List<Problem> problems() {
		return faults.stream().map(Fault::problem).toList();
	}

	/** Somebody who watches and may end it. */
	public interface Watcher {
		/** Told after every job. @param jobs so far @param all how many there are; 0 when nobody counted @return whether to go on */
		boolean goOn(int jobs, int all);

		/** Told while what was read is put in its place, which cannot be ended any more. @param steps so far @param all how many there are */
		default void placing(int steps, int all) {
			// not everybody wants to know
		}
	}
}
