package org.setwright.bench;

import java.util.List;
import java.util.Optional;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;

/**
 * What comes of one line.
 *
 * @param session the bench afterwards
 * @param rows what to show; only what changed, or the answer
 * @param misread why the line could not be followed; then nothing has changed
 * @param wish what is asked of whoever shows the bench
 */
public record Turn(Session session, List<Row> rows, Optional<Misread> misread, Optional<Wish> wish) {
	public Turn {
		rows = List.copyOf(rows);
	}

	static Turn told(Session session, List<Row> rows) {
		return new Turn(session, rows, Optional.empty(), Optional.empty());
	}

	static Turn misread(Session session, Misread why) {
		return new Turn(session, List.of(), Optional.of(why), Optional.empty());
	}

	static Turn wishing(Session session, Wish wish) {
		return new Turn(session, List.of(), Optional.empty(), Optional.of(wish));
	}
}
