package org.setwright.book;

import java.util.List;

/**
 * A look-up table as written: text cells with their positions. What the cells mean is decided by the engine.
 *
 * @param path below the book folder, for example {@code tables/changeover-by-maker.csv}
 * @param name the file name without its ending
 * @param header the cells of the first row
 * @param rows the other rows, in file order; each has as many cells as the header
 */
public record Table(String path, String name, List<Cell> header, List<Row> rows) {
	public Table {
		header = List.copyOf(header);
		rows = List.copyOf(rows);
	}

	/** One cell. @param text without surrounding blanks; may be empty @param at where it begins */
	public record Cell(String text, Position at) {
	}

	/** One row. @param number from 1, not counting the header */
	public record Row(int number, List<Cell> cells) {
		public Row {
			cells = List.copyOf(cells);
		}
	}
}
