package org.setwright.editions.written;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.book.text.SourceText;

/** Tells the rows of a table file apart. */
public final class TableFiles {
	private TableFiles() {
	}

	/** @param path below the book @param text the whole file, whatever it holds @return its rows in file order */
	public static List<WrittenRule> rows(String path, String text) {
		SourceText source = SourceText.of(text);
		Table table = TableReader.read(path, text).table();
		List<Integer> starts = new ArrayList<>();
		int at = 0;
		for (int line = 1; at < source.text().length(); line++) {
			starts.add(at);
			at = source.nextLine(at);
		}
		List<WrittenRule> rows = new ArrayList<>();
		for (int i = 0; i < table.rows().size(); i++) {
			Table.Row row = table.rows().get(i);
			int first = row.cells().get(0).at().line();
			int next = i + 1 < table.rows().size() ? table.rows().get(i + 1).cells().get(0).at().line() : starts.size() + 1;
			int start = starts.get(first - 1);
			String written = source.text().substring(start, next - 1 < starts.size() ? starts.get(next - 1) : source.text().length()).stripTrailing();
			rows.add(new WrittenRule("table " + table.name() + ", row " + row.number(), path, first, first + (int) written.lines().count() - 1, row.number(),
					parts(table.header(), row), written, start));
		}
		return rows;
	}

	private static Parts parts(List<Table.Cell> header, Table.Row row) {
		List<String> conditions = new ArrayList<>();
		List<String> outcomes = new ArrayList<>();
		String authority = "";
		String because = "";
		String source = "";
		for (int i = 0; i < header.size(); i++) {
			String heading = single(header.get(i).text());
			String cell = single(row.cells().get(i).text());
			switch (heading.toLowerCase(Locale.ROOT)) {
				case "authority" -> authority = cell.toLowerCase(Locale.ROOT);
				case "because" -> because = cell;
				case "source" -> source = cell;
				default -> {
					if (!cell.isEmpty()) {
						(heading.startsWith("=>") ? outcomes : conditions).add(heading.replaceFirst("^=>\\s*", "") + ": " + cell);
					}
				}
			}
		}
		return new Parts(conditions, outcomes, authority, because, source, "");
	}

	private static String single(String text) {
		return text.strip().replaceAll("\\s+", " ");
	}
}
