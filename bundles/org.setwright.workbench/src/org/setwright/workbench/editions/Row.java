package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import org.setwright.workbench.look.Icon;

/**
 * A line of a list, ready to be shown.
 *
 * @param sign before its first cell
 * @param cells one for each column; the last ones may be missing
 * @param about what it is about; empty when there is nothing to be shown of it
 * @param below its lines
 */
record Row(Icon sign, List<String> cells, Optional<Object> about, List<Row> below) {
	Row {
		cells = List.copyOf(cells);
		below = List.copyOf(below);
	}

	/** A line without lines below. */
	Row(Icon sign, List<String> cells, Object about) {
		this(sign, cells, Optional.of(about), List.of());
	}

	/** A line of words only. */
	static Row heading(Icon sign, String words, List<Row> below) {
		return new Row(sign, List.of(words), Optional.empty(), below);
	}

	/** @return what stands in this column, from 0 */
	String cell(int column) {
		return column < cells.size() ? cells.get(column) : ""; //$NON-NLS-1$
	}
}
