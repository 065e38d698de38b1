package org.setwright.book.sheet;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.csv.CsvText.CsvCell;
import org.setwright.book.csv.CsvText.CsvRecord;

/**
 * Where one row stands in the text of a table.
 *
 * @param start where its first line begins, as an offset
 * @param end where its last line ends, the line break not included
 * @param cells its cells, each with the stretch of text it is written in
 */
record SheetRow(int start, int end, List<Written> cells) {
	SheetRow {
		cells = List.copyOf(cells);
	}

	/** A cell as it is written. @param text what it says @param start where it is written @param end behind its last character */
	record Written(String text, int start, int end) {
	}

	static SheetRow of(String text, CsvRecord row) {
		List<Written> cells = new ArrayList<>();
		row.cells().forEach(c -> cells.add(new Written(c.text(), c.start(), end(text, c))));
		int start = cells.get(0).start();
		while (start > 0 && !breaks(text.charAt(start - 1))) {
			start--;
		}
		int end = cells.get(cells.size() - 1).end();
		while (end < text.length() && !breaks(text.charAt(end))) {
			end++;
		}
		return new SheetRow(start, end, cells);
	}

	/** Where what is written of a cell ends: its closing quote, or its last character that is no blank. */
	private static int end(String text, CsvCell cell) {
		if (cell.start() < text.length() && text.charAt(cell.start()) == '"') {
			return quoted(text, cell.start() + 1);
		}
		return cell.start() + cell.text().length();
	}

	private static int quoted(String text, int from) {
		int at = from;
		while (at < text.length()) {
			if (text.charAt(at) != '"') {
				at++;
			} else if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
				at += 2;
			} else {
				return at + 1;
			}
		}
		return at;
	}

	private static boolean breaks(char c) {
		return c == '\n' || c == '\r';
	}
}
