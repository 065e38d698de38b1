package org.setwright.book.csv;

import java.util.List;
import java.util.Optional;

/**
 * What reading comma-separated text gives. Blank lines and lines that begin with # are left out.
 *
 * @param records in text order; each has at least one cell
 * @param faults what is wrong with how the text is written, in text order
 */
public record CsvText(List<CsvRecord> records, List<Fault> faults) {
	public CsvText {
		records = List.copyOf(records);
		faults = List.copyOf(faults);
	}

	/** One row of cells, on one line or (with line breaks inside quotes) several. */
	public record CsvRecord(List<CsvCell> cells) {
		public CsvRecord {
			cells = List.copyOf(cells);
		}

		/** @return whether nothing is written in any cell */
		public boolean isBlank() {
			return cells.stream().allMatch(c -> c.text().isEmpty());
		}
	}

	/**
	 * One cell.
	 *
	 * @param text without quotes and the blanks around; line breaks inside quotes are LF
	 * @param start where its text or opening quote stands, as an offset; where it would stand when it is empty
	 */
	public record CsvCell(String text, int start) {
	}

	/** Something wrong at an offset, and what to do about it, one sentence each. */
	public record Fault(int offset, String what, String remedy) {
	}

	/** @return the first record, or empty */
	public Optional<CsvRecord> first() {
		return records.stream().findFirst();
	}
}
