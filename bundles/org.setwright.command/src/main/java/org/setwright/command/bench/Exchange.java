package org.setwright.command.bench;

import java.util.List;
import java.util.Optional;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;

/**
 * A line and what was told of it.
 *
 * @param line as typed; several lines for a rule
 * @param rows what was told
 * @param misread why it could not be followed
 * @param refused why what it asked for could not be done although it was understood; a sentence, else empty
 */
record Exchange(String line, List<Row> rows, Optional<Misread> misread, String refused) {
	Exchange {
		rows = List.copyOf(rows);
	}

	/** @return whether the line did not do what it says */
	boolean failed() {
		return misread.isPresent() || !refused.isEmpty();
	}
}
