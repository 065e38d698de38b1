package org.setwright.workbench.bench;

import java.util.List;
import org.eclipse.osgi.util.NLS;
import org.setwright.bench.Turn;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Rows;
import org.setwright.bench.told.Tone;

/**
 * A line and what was told of it.
 *
 * @param line as typed; empty when nobody typed anything
 * @param rows what was told
 * @param failed whether the line could not be followed
 */
record Told(String line, List<Row> rows, boolean failed) {
	Told {
		rows = List.copyOf(rows);
	}

	/** @return {@code line} and what came of it */
	static Told of(String line, Turn turn) {
		return turn.misread().map(m -> misread(line, m)).orElseGet(() -> new Told(line, turn.rows(), false));
	}

	/** @return something nobody asked for */
	static Told unasked(List<Row> rows) {
		return new Told("", rows, false); //$NON-NLS-1$
	}

	/** @return {@code line} and one sentence about it */
	static Told sentence(String line, Tone tone, String sentence) {
		return new Told(line, List.of(new Row(0, tone, sentence, "")), tone == Tone.ALARM); //$NON-NLS-1$
	}

	private static Told misread(String line, Misread why) {
		boolean several = line.indexOf('\n') >= 0;
		String part = line.substring(Math.min(why.start(), line.length()), Math.min(why.end(), line.length()));
		String at = several ? NLS.bind(Messages.Told_lineAndColumn, why.line(line), why.column(line)) : NLS.bind(Messages.Told_column, why.column(line));
		String where = part.isBlank() || part.indexOf('\n') >= 0 ? at : NLS.bind(Messages.Told_where, at, part);
		return new Told(line, new Rows().add(0, Tone.ALARM, NLS.bind(Messages.Told_misread, where, why.what()))
				.add(1, Tone.PLAIN, why.remedy()).all(), true);
	}
}
