package org.setwright.command.answer;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.setwright.book.Position;
import org.setwright.book.Problem;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** What is wrong in a book, in every form. */
public record Problems(List<Problem> list) {
	private static final Predicate<Problem> ERROR = p -> p.severity() == Problem.Severity.ERROR;

	public Problems {
		list = List.copyOf(list);
	}

	/** @return whether nothing can run */
	public boolean haveErrors() {
		return list.stream().anyMatch(ERROR);
	}

	/** @return for example "2 errors and 1 warning", or "1 warning" when there is no error */
	public String counted() {
		long errors = list.stream().filter(ERROR).count();
		long warnings = list.size() - errors;
		return errors == 0 || warnings == 0 ? counted(list.size(), errors == 0 ? "warning" : "error")
				: counted(errors, "error") + " and " + counted(warnings, "warning");
	}

	/** @return for example "1 job" or "3 jobs" */
	public static String counted(long number, String noun) {
		return number + " " + noun + (number == 1 ? "" : "s");
	}

	/** Lists them all: the place, then what is wrong, then what to do. */
	public void text(Page page) {
		for (Problem problem : list) {
			Style style = ERROR.test(problem) ? Style.ALARM : Style.ATTENTION;
			page.line(0, style, severity(problem) + " in " + problem.at());
			page.line(2, Style.PLAIN, problem.what());
			page.line(2, Style.STRONG, problem.remedy());
		}
	}

	/** Writes the field "problems". */
	public void json(JsonGenerator json) throws IOException {
		json.writeArrayFieldStart("problems");
		for (Problem problem : list) {
			json.writeStartObject();
			json.writeStringField("severity", severity(problem));
			at(json, problem.at());
			json.writeStringField("what", problem.what());
			json.writeStringField("remedy", problem.remedy());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	/** Writes the fields "file", "line" and "column"; line and column are 0 where the whole is meant. */
	public static void at(JsonGenerator json, Position position) throws IOException {
		json.writeStringField("file", position.file());
		json.writeNumberField("line", position.line());
		json.writeNumberField("column", position.column());
	}

	/** @return the CSV rows, with their header */
	public List<List<String>> csv() {
		Stream<List<String>> header = Stream.of(List.of("severity", "file", "line", "column", "what", "remedy"));
		return Stream.concat(header, list.stream().map(p -> List.of(severity(p), p.at().file(),
				Integer.toString(p.at().line()), Integer.toString(p.at().column()), p.what(), p.remedy()))).toList();
	}

	private static String severity(Problem problem) {
		return problem.severity().name().toLowerCase(Locale.ROOT);
	}
}
