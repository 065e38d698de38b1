package org.setwright.book.csv;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.csv.CsvText.CsvCell;
import org.setwright.book.csv.CsvText.CsvRecord;
import org.setwright.book.csv.CsvText.Fault;

/**
 * Reads comma-separated text as RFC 4180 describes it, and allows blanks around cells, blank lines and comment lines.
 * It is our own because every cell has to know where it stands; a test holds it to the same cells as a library gives.
 */
public final class CsvReader {
	private static final char COMMENT = '#';
	private final String text;
	private final List<CsvRecord> records = new ArrayList<>();
	private final List<Fault> faults = new ArrayList<>();
	private int at;

	private CsvReader(String text) {
		this.text = text;
	}

	/** @return the cells of {@code text}; never throws for what it says */
	public static CsvText read(String text) {
		CsvReader reader = new CsvReader(text);
		while (reader.at < text.length()) {
			reader.line();
		}
		return new CsvText(reader.records, reader.faults);
	}

	private void line() {
		skipBlanks();
		if (peek() == COMMENT) {
			skipToLineEnd();
		}
		if (!atLineEnd()) {
			CsvRecord read = row();
			if (!read.isBlank()) {
				records.add(read);
			}
		}
		skipLineBreak();
	}

	private CsvRecord row() {
		List<CsvCell> cells = new ArrayList<>();
		cells.add(cell());
		while (peek() == ',' && at < text.length()) {
			at++;
			cells.add(cell());
		}
		return new CsvRecord(cells);
	}

	private CsvCell cell() {
		skipBlanks();
		return peek() == '"' ? quoted() : plain();
	}

	private CsvCell plain() {
		int start = at;
		while (!atLineEnd() && peek() != ',') {
			at++;
		}
		return new CsvCell(text.substring(start, at).strip(), start);
	}

	private CsvCell quoted() {
		int start = at++;
		StringBuilder said = new StringBuilder();
		while (at < text.length()) {
			char c = text.charAt(at++);
			if (c == '"' && peek() != '"') {
				return closed(new CsvCell(said.toString().strip(), start));
			} else if (c == '"') {
				at++;
			}
			if (c != '\r' || peek() != '\n') {
				said.append(c == '\r' ? '\n' : c);
			}
		}
		faults.add(new Fault(start, "The quote opened here is not closed.", "Add the closing quote at the end of the cell."));
		return new CsvCell(said.toString().strip(), start);
	}

	private CsvCell closed(CsvCell cell) {
		skipBlanks();
		if (!atLineEnd() && peek() != ',') {
			faults.add(new Fault(at, "Text stands between a closing quote and the next comma.",
					"Put the whole cell in one pair of quotes, and write a quote inside it twice."));
			while (!atLineEnd() && peek() != ',') {
				at++;
			}
		}
		return cell;
	}

	private void skipBlanks() {
		while (peek() == ' ' && at < text.length() || peek() == '\t') {
			at++;
		}
	}

	private void skipToLineEnd() {
		while (!atLineEnd()) {
			at++;
		}
	}

	private void skipLineBreak() {
		if (peek() == '\r') {
			at++;
		}
		if (peek() == '\n') {
			at++;
		}
	}

	private boolean atLineEnd() {
		return at >= text.length() || peek() == '\n' || peek() == '\r';
	}

	/** The next character; NUL at the end of the text. */
	private char peek() {
		return at < text.length() ? text.charAt(at) : 0;
	}
}
