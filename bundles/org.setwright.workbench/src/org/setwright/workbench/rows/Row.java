package org.setwright.workbench.rows;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Letters;

/**
 * A line of a list, ready to be shown. Nothing in it is null.
 *
 * @param sign before its first cell
 * @param cells one for each column; the last ones may be missing
 * @param lacking whether something is wanting here, so that it stays when only that is shown
 * @param about what it is about; empty when there is nothing to be shown of it
 * @param below its lines
 */
public record Row(Icon sign, List<String> cells, boolean lacking, Optional<Object> about, List<Row> below) {
	/** Keeps what it is given as it is now. */
	public Row {
		cells = List.copyOf(cells);
		below = List.copyOf(below);
	}

	/** A line where nothing is wanting. */
	public Row(Icon sign, List<String> cells, Optional<Object> about, List<Row> below) {
		this(sign, cells, false, about, below);
	}

	/** A line without lines below. */
	public Row(Icon sign, List<String> cells, Object about) {
		this(sign, cells, Optional.of(about), List.of());
	}

	/** @return a line of words only */
	public static Row heading(Icon sign, String words, List<Row> below) {
		return new Row(sign, List.of(words), Optional.empty(), below);
	}

	/** @return what stands in this column, from 0; "" when nothing */
	public String cell(int column) {
		return column < cells.size() ? cells.get(column) : ""; //$NON-NLS-1$
	}

	/** @return its first and last cell, which stay the same whatever is counted between them */
	List<String> ends() {
		return cells.isEmpty() ? cells : List.of(cells.get(0), cells.get(cells.size() - 1));
	}

	/** @return the lines below that are shown; all of them when this line itself is found */
	List<Row> below(boolean lackingOnly, String search) {
		boolean found = found(search);
		return below.stream().filter(l -> (!lackingOnly || l.lacking) && (found || l.found(search))).toList();
	}

	/** @return whether it is shown, itself or for what is below it */
	boolean shown(boolean lackingOnly, String search) {
		return (!lackingOnly || lacking) && (found(search) || below.stream().anyMatch(l -> l.found(search)));
	}

	private boolean found(String search) {
		return SearchWords.allIn(search, String.join("\n", cells).toLowerCase(Locale.ROOT)); //$NON-NLS-1$
	}

	/** @return below 0 when this line comes before {@code other} by this column: numbers by their size, words by their letters */
	int compare(Row other, int column) {
		return Letters.compare(cell(column), other.cell(column));
	}
}
