package org.setwright.book;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setwright.book.csv.CsvReader;
import org.setwright.book.csv.CsvText;
import org.setwright.book.csv.CsvText.CsvCell;
import org.setwright.book.csv.CsvText.CsvRecord;
import org.setwright.book.text.SourceText;

/** Reads the text of a table file, saved or still being typed, into cells. What the cells mean is decided elsewhere. */
public final class TableReader {
	private final ProblemList problems;

	private TableReader(ProblemList problems) {
		this.problems = problems;
	}

	/**
	 * Never throws for what the text says.
	 *
	 * @param path where the file is or will be, below the book folder
	 * @param text the whole file
	 */
	public static TableText read(String path, String text) {
		SourceText source = SourceText.of(text);
		ProblemList problems = new ProblemList(path, source);
		Table table = new TableReader(problems).table(path, CsvReader.read(source.text()));
		return new TableText(table, problems.all());
	}

	private Table table(String path, CsvText csv) {
		csv.faults().forEach(f -> problems.error(f.offset(), f.what(), f.remedy()));
		String name = path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.csv$", "");
		if (csv.records().isEmpty()) {
			problems.errorInFile("The table is empty.",
					"Begin with a line of headings separated by commas, for example \"outdoor unit maker, => changeover valve\".");
			return new Table(path, name, List.of(), List.of());
		}
		List<CsvCell> header = withoutEmptyEnd(csv.records().get(0).cells());
		checkHeader(header);
		List<Table.Row> rows = new ArrayList<>();
		for (CsvRecord written : csv.records().subList(1, csv.records().size())) {
			rows.add(new Table.Row(rows.size() + 1, cells(fitted(written, header.size(), rows.size() + 1))));
		}
		if (rows.isEmpty()) {
			problems.warningInFile("The table has headings but no rows, so it says nothing.", "Add rows, or remove the file.");
		}
		return new Table(path, name, cells(header), rows);
	}

	private void checkHeader(List<CsvCell> header) {
		String all = header.get(0).text();
		if (header.size() == 1 && (all.contains(";") || all.contains("\t"))) {
			problems.error(header.get(0).start(), "The headings are not separated by commas.",
					"Save the table as comma-separated values (CSV) with commas.");
			return;
		}
		Map<String, CsvCell> seen = new HashMap<>();
		for (int i = 0; i < header.size(); i++) {
			CsvCell cell = header.get(i);
			CsvCell first = seen.putIfAbsent(Keys.normal(cell.text()), cell);
			if (cell.text().isEmpty()) {
				problems.error(cell.start(), "Column " + (i + 1) + " has no heading.",
						"Write which fact or setting the column is about, or remove the column.");
			} else if (first != null) {
				problems.error(cell.start(), "The heading " + Misfit.quoted(cell.text()) + " stands on two columns.",
						"Make one column of the two.");
			}
		}
	}

	/** The row with as many cells as the header, after reporting it when it had more or fewer. */
	private List<CsvCell> fitted(CsvRecord row, int columns, int number) {
		List<CsvCell> cells = new ArrayList<>(row.cells());
		while (cells.size() > columns && cells.get(cells.size() - 1).text().isEmpty()) {
			cells.remove(cells.size() - 1);
		}
		CsvCell last = cells.get(cells.size() - 1);
		if (cells.size() < columns) {
			problems.error(last.start(), "Row " + number + " has " + cells.size() + " cells, but there are " + columns + " headings.",
					"Add the missing commas, also for cells that are left empty.");
		} else if (cells.size() > columns) {
			problems.error(cells.get(columns).start(), "Row " + number + " has " + cells.size() + " cells, but there are only "
					+ columns + " headings.", "Remove the extra cells; put a cell that holds a comma in quotes.");
		}
		while (cells.size() < columns) {
			cells.add(new CsvCell("", last.start() + last.text().length()));
		}
		return cells.subList(0, columns);
	}

	private static List<CsvCell> withoutEmptyEnd(List<CsvCell> cells) {
		int size = cells.size();
		while (size > 1 && cells.get(size - 1).text().isEmpty()) {
			size--;
		}
		return cells.subList(0, size);
	}

	private List<Table.Cell> cells(List<CsvCell> cells) {
		return cells.stream().map(c -> new Table.Cell(c.text(), problems.at(c.start()))).toList();
	}
}
