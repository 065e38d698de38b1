package org.setwright.book.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Cells as spreadsheets put them on the clipboard: rows end with a line break, cells are separated by tabs, and a cell
 * with a tab, line break or quote inside stands in quotes with each quote written twice.
 */
final class Copied {
	private final String text;
	private int at;

	private Copied(String text) {
		this.text = text;
	}

	/** @return the cells of each row; the line break at the end makes no row */
	static List<List<String>> cells(String text) {
		Copied copied = new Copied(text);
		List<List<String>> rows = new ArrayList<>();
		while (copied.at < text.length()) {
			rows.add(copied.row());
		}
		return rows;
	}

	private List<String> row() {
		List<String> cells = new ArrayList<>();
		cells.add(cell());
		while (at < text.length() && text.charAt(at) == '\t') {
			at++;
			cells.add(cell());
		}
		at += text.startsWith("\r\n", at) ? 2 : at < text.length() ? 1 : 0;
		return cells;
	}

	private String cell() {
		int quoted = closing();
		if (quoted > 0) {
			String inside = text.substring(at + 1, quoted).replace("\"\"", "\"");
			at = quoted + 1;
			return oneLine(inside);
		}
		int start = at;
		while (at < text.length() && "\t\r\n".indexOf(text.charAt(at)) < 0) {
			at++;
		}
		return oneLine(text.substring(start, at));
	}

	/** Where the quote closes that opens here, when the cell ends behind it; else 0: then quotes are words like others. */
	private int closing() {
		if (at >= text.length() || text.charAt(at) != '"') {
			return 0;
		}
		int i = at + 1;
		while (i < text.length()) {
			if (text.charAt(i) != '"') {
				i++;
			} else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
				i += 2;
			} else {
				return i + 1 == text.length() || "\t\r\n".indexOf(text.charAt(i + 1)) >= 0 ? i : 0;
			}
		}
		return 0;
	}

	private static String oneLine(String words) {
		return words.replaceAll("\\s*[\\r\\n]+\\s*", " ").strip();
	}
}
