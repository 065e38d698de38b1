package org.setwright.book.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setwright.book.csv.CsvReader;
import org.setwright.book.csv.CsvText;
import org.setwright.book.text.SourceText;

/**
 * The text of a look-up table as rows that can be changed. Every change gives a new sheet whose text differs in the rows
 * touched and nowhere else: comments, blank lines, quotes, blanks between cells and line breaks of the others stay.
 * Rows and columns count from 0 here, the headings not counted. Immutable.
 */
public final class TableSheet {
	private final String text;
	private final String lineBreak;
	private final List<String> headings;
	private final List<SheetRow> rows;
	private final int headingsEnd;
	private final boolean sound;

	private TableSheet(String text) {
		this.text = text;
		lineBreak = SourceText.of(text).lineBreak();
		CsvText read = CsvReader.read(text);
		List<SheetRow> all = read.records().stream().map(r -> SheetRow.of(text, r)).toList();
		headings = all.isEmpty() ? List.of() : all.get(0).cells().stream().map(SheetRow.Written::text).toList();
		headingsEnd = all.isEmpty() ? 0 : all.get(0).end();
		rows = all.isEmpty() ? List.of() : all.subList(1, all.size());
		sound = read.faults().isEmpty() && !all.isEmpty();
	}

	/** @param text the whole file, a byte order mark before it left out; not null @return it as a sheet */
	public static TableSheet of(String text) {
		return new TableSheet(text);
	}

	/** @return the whole file */
	public String text() {
		return text;
	}

	/** @return whether it has headings and every quote is closed; a sheet that is not sound is not to be changed */
	public boolean sound() {
		return sound;
	}

	/** @return the headings, in order */
	public List<String> headings() {
		return headings;
	}

	/** @return how many rows there are */
	public int rows() {
		return rows.size();
	}

	/** @return what the cell says; empty when the row is shorter */
	public String cell(int row, int column) {
		List<SheetRow.Written> cells = rows.get(row).cells();
		return column < cells.size() ? cells.get(column).text() : "";
	}

	/** @return what the cells of a row say, one for each heading */
	public List<String> row(int row) {
		return IntStream.range(0, headings.size()).mapToObj(column -> cell(row, column)).toList();
	}

	/** @return this with {@code says} in a cell; this itself when it says so already */
	public TableSheet with(int row, int column, String says) {
		String wanted = says.strip();
		SheetRow written = rows.get(row);
		if (cell(row, column).equals(wanted)) {
			return this;
		} else if (column < written.cells().size()) {
			SheetRow.Written cell = written.cells().get(column);
			return replaced(cell.start(), cell.end(), encoded(wanted, column == 0));
		}
		String commas = ",".repeat(column - written.cells().size() + 1);
		return replaced(written.end(), written.end(), commas + encoded(wanted, false));
	}

	/**
	 * @param after the row below which it goes; -1 for right below the headings
	 * @param says its cells; not all empty, because a row that says nothing is no row
	 */
	public TableSheet withRow(int after, List<String> says) {
		int at = after < 0 ? headingsEnd : rows.get(after).end();
		return replaced(at, at, lineBreak + line(says));
	}

	/** @return this without some rows, each with the line break behind it */
	public TableSheet without(List<Integer> gone) {
		TableSheet left = this;
		for (int row : gone.stream().distinct().sorted(Collections.reverseOrder()).toList()) {
			left = left.without(left.rows.get(row));
		}
		return left;
	}

	/**
	 * @param order every row once, in the order in which they shall stand
	 * @return this with its rows in that order; comments and blank lines between them stay where they are
	 */
	public TableSheet inOrder(List<Integer> order) {
		if (!order.stream().sorted().toList().equals(IntStream.range(0, rows.size()).boxed().toList())) {
			throw new IllegalArgumentException("not every row once: " + order);
		}
		StringBuilder changed = new StringBuilder(text);
		for (int place = rows.size() - 1; place >= 0; place--) {
			SheetRow there = rows.get(place);
			SheetRow wanted = rows.get(order.get(place));
			changed.replace(there.start(), there.end(), text.substring(wanted.start(), wanted.end()));
		}
		return new TableSheet(changed.toString());
	}

	/**
	 * Puts in what somebody copied from a spreadsheet: lines of cells separated by tabs. Rows that are missing are added.
	 *
	 * @param row where the first line goes
	 * @param column where the first cell of each line goes; cells beyond the last column are left out
	 */
	public TableSheet pasted(int row, int column, String copied) {
		TableSheet sheet = this;
		int at = row;
		for (List<String> cells : Copied.cells(copied)) {
			sheet = at < sheet.rows() ? sheet.overwritten(at, column, cells) : sheet.appended(column, cells);
			at++;
		}
		return sheet;
	}

	private TableSheet overwritten(int row, int column, List<String> cells) {
		TableSheet sheet = this;
		for (int i = 0; i < cells.size() && column + i < headings.size(); i++) {
			sheet = sheet.with(row, column + i, cells.get(i));
		}
		return sheet;
	}

	private TableSheet appended(int column, List<String> cells) {
		List<String> says = new ArrayList<>(Collections.nCopies(headings.size(), ""));
		for (int i = 0; i < cells.size() && column + i < headings.size(); i++) {
			says.set(column + i, cells.get(i));
		}
		return says.stream().allMatch(String::isBlank) ? this : withRow(rows.size() - 1, says);
	}

	/** @return the line of the file on which the row begins, from 1 */
	public int line(int row) {
		return SourceText.of(text).line(rows.get(row).start());
	}

	/** @param at a column of the first line of the row, counting characters from 1 @return the cell that stands there */
	public int column(int row, int at) {
		SheetRow written = rows.get(row);
		int offset = SourceText.of(text).lineStart(written.start()) + at - 1;
		int column = 0;
		while (column + 1 < Math.min(headings.size(), written.cells().size()) && written.cells().get(column + 1).start() <= offset) {
			column++;
		}
		return column;
	}

	private TableSheet without(SheetRow row) {
		int end = row.end();
		int start = row.start();
		if (end < text.length()) {
			end += text.startsWith("\r\n", end) ? 2 : 1;
		} else if (start > 0) {
			start -= text.startsWith("\r\n", Math.max(0, start - 2)) ? 2 : 1;
		}
		return replaced(start, end, "");
	}

	private TableSheet replaced(int from, int to, String by) {
		return new TableSheet(text.substring(0, from) + by + text.substring(to));
	}

	private static String line(List<String> says) {
		return IntStream.range(0, says.size()).mapToObj(i -> encoded(says.get(i).strip(), i == 0)).collect(Collectors.joining(","));
	}

	/** In quotes only where it must be; what would make a comment of the row is quoted too. */
	private static String encoded(String says, boolean first) {
		boolean quotes = says.contains(",") || says.contains("\"") || says.contains("\n") || says.contains("\r") || first && says.startsWith("#");
		return quotes ? '"' + says.replace("\"", "\"\"") + '"' : says;
	}
}
