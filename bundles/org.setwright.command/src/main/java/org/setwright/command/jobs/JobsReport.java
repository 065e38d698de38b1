package org.setwright.command.jobs;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** The jobs of a book, and what is wrong with its files. The rules are not compiled for it. */
record JobsReport(Book book) implements Report {
	private static final int LONGEST_NAME = 44;

	@Override
	public String word() {
		return "jobs";
	}

	@Override
	public int exitCode() {
		return problems().haveErrors() ? ExitCode.PROBLEMS : ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, book.name() + ": " + Problems.counted(book.jobs().size(), "job"));
		int width = book.jobs().stream().mapToInt(j -> j.name().length()).max().orElse(1);
		for (JobCase job : book.jobs()) {
			page.row(2, new Cell(Math.min(width, LONGEST_NAME), Style.PLAIN, job.name()), Cell.rest(Style.QUIET, job.path()));
		}
		page.blank();
		problems().text(page);
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		OpenBook.json(json, book);
		problems().json(json);
		json.writeArrayFieldStart("jobs");
		for (JobCase job : book.jobs()) {
			json.writeStartObject();
			json.writeStringField("job", job.name());
			json.writeStringField("path", job.path());
			json.writeStringField("notes", job.notes());
			json.writeNumberField("expects", job.expectations());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		return Stream.concat(Stream.of(List.of("job", "path", "notes", "expects")), book.jobs().stream()
				.map(j -> List.of(j.name(), j.path(), j.notes(), Integer.toString(j.expectations())))).toList();
	}

	private Problems problems() {
		return new Problems(book.problems());
	}
}
