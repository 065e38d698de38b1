package org.setwright.command.editions;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/**
 * An answer about editions: a title, things one below the other, and a last line.
 *
 * @param list the name of the list of things in JSON
 * @param columns the fields every thing has, in order; one it leaves out is empty
 * @param last may be empty
 */
record Told(String word, Book book, String title, String list, List<String> columns, List<Item> items, String last, int exitCode) implements Report {

	/** All is well. */
	static Told fine(String word, Book book, String title, String list, List<String> columns, List<Item> items, String last) {
		return new Told(word, book, title, list, columns, items, last, ExitCode.FINE);
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, title);
		for (Item item : items) {
			for (Item.Line line : item.lines()) {
				if (line.verbatim()) {
					page.verbatim(line.indent(), line.style(), line.words());
				} else {
					page.line(line.indent(), line.style(), line.words());
				}
			}
		}
		if (!last.isEmpty()) {
			page.blank().line(0, exitCode == ExitCode.FINE ? Style.PLAIN : Style.ALARM, last);
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		OpenBook.json(json, book);
		json.writeArrayFieldStart(list);
		for (Item item : items) {
			json.writeStartObject();
			for (String column : columns) {
				json.writeStringField(column, item.field(column));
			}
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>(List.of(columns));
		items.forEach(i -> rows.add(columns.stream().map(i::field).toList()));
		return rows;
	}
}
