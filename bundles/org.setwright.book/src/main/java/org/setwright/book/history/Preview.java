package org.setwright.book.history;

import java.util.List;

/**
 * How a CSV file begins.
 *
 * @param headings of its columns
 * @param rows the first ones, each with its cells; a row may have too few or too many
 * @param more whether there are further rows
 */
public record Preview(List<String> headings, List<List<String>> rows, boolean more) {
	public Preview {
		headings = List.copyOf(headings);
		rows = List.copyOf(rows);
	}

	/** @return what stands in the column with this number, from 0, each once and in its order; empty cells left out */
	public List<String> cells(int column) {
		return rows.stream().filter(r -> column < r.size()).map(r -> r.get(column)).filter(c -> !c.isBlank()).distinct().toList();
	}
}
