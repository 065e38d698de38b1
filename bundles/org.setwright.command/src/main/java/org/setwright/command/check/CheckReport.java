package org.setwright.command.check;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.setwright.book.Book;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.Edition;

/** What is in a book and what is wrong with it, without its jobs being run. */
public record CheckReport(OpenBook open) implements Report {

	@Override
	public String word() {
		return "check";
	}

	@Override
	public int exitCode() {
		return open.problems().haveErrors() ? ExitCode.PROBLEMS : ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		Problems problems = open.problems();
		page.line(0, Style.STRONG, open.book().name() + ": " + contents()).blank();
		problems.text(page);
		page.blank();
		if (problems.haveErrors()) {
			page.line(0, Style.ALARM, problems.counted() + ". Nothing runs until the errors are mended.");
		} else {
			page.line(0, Style.GOOD, problems.list().isEmpty() ? "No problems." : problems.counted() + ". The book runs.");
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		open.problems().json(json);
		json.writeBooleanField("runs", open.compilation().edition().isPresent());
		json.writeNumberField("rules", rules());
		json.writeNumberField("tables", open.book().tables().size());
		json.writeNumberField("jobs", open.book().jobs().size());
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> problems = open.problems().csv();
		Stream<List<String>> rows = problems.stream().skip(1).map(p -> with(p, List.of("", "", "", "", "")));
		return Stream.concat(Stream.of(with(problems.get(0), List.of("job", "point", "standing", "expected", "came"))), rows).toList();
	}

	private static List<String> with(List<String> row, List<String> more) {
		return Stream.concat(row.stream(), more.stream()).toList();
	}

	private String contents() {
		Book book = open.book();
		String rules = open.compilation().edition().isPresent() ? Problems.counted(rules(), "rule") + " (table rows included), " : "";
		return rules + Problems.counted(book.ruleFiles().size(), "rule file") + ", "
				+ Problems.counted(book.tables().size(), "table") + ", " + Problems.counted(book.jobs().size(), "job");
	}

	private int rules() {
		return open.compilation().edition().map(Edition::rules).map(List::size).orElse(0);
	}
}
