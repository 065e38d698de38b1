package org.setwright.command.bench;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.bench.told.Misread;
import org.setwright.bench.told.Row;
import org.setwright.book.JobCase;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/**
 * What was told of the lines of a script.
 *
 * @param job the job it began with
 * @param exchanges one for each line, up to the first that could not be followed
 * @param notTried how many lines came after that
 * @param expectedIsMet whether what was expected in lines is met
 */
record BenchReport(OpenBook open, JobCase job, List<Exchange> exchanges, int notTried, boolean expectedIsMet) implements Report {
	@Override
	public String word() {
		return "bench";
	}

	@Override
	public int exitCode() {
		return expectedIsMet && exchanges.stream().noneMatch(Exchange::failed) ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	@Override
	public void text(Page page) {
		BenchText text = new BenchText(page);
		for (Exchange exchange : exchanges) {
			text.line(exchange.line());
			text.answer(exchange);
			page.blank();
		}
		if (notTried > 0) {
			page.line(0, Style.ATTENTION, notTried == 1 ? "The line after it was not tried." : "The " + notTried + " lines after it were not tried.");
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", job.name());
		json.writeStringField("path", job.path());
		json.writeArrayFieldStart("lines");
		for (Exchange exchange : exchanges) {
			exchange(exchange, json);
		}
		json.writeEndArray();
		json.writeNumberField("notTried", notTried);
		json.writeBooleanField("expectedIsMet", expectedIsMet);
	}

	private static void exchange(Exchange exchange, JsonGenerator json) throws IOException {
		json.writeStartObject();
		json.writeStringField("line", exchange.line());
		json.writeArrayFieldStart("told");
		for (Row row : exchange.rows()) {
			json.writeStartObject();
			json.writeNumberField("depth", row.depth());
			json.writeStringField("words", row.words());
			json.writeStringField("at", row.at());
			json.writeEndObject();
		}
		json.writeEndArray();
		if (exchange.misread().isPresent()) {
			Misread why = exchange.misread().get();
			json.writeObjectFieldStart("misread");
			json.writeNumberField("line", why.line(exchange.line()));
			json.writeNumberField("column", why.column(exchange.line()));
			json.writeStringField("what", why.what());
			json.writeStringField("remedy", why.remedy());
			json.writeEndObject();
		}
		if (!exchange.refused().isEmpty()) {
			json.writeStringField("refused", exchange.refused());
		}
		json.writeEndObject();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("line", "depth", "words", "at"));
		for (Exchange exchange : exchanges) {
			exchange.rows().forEach(r -> rows.add(List.of(exchange.line(), Integer.toString(r.depth()), r.words(), r.at())));
			exchange.misread().ifPresent(m -> rows.add(List.of(exchange.line(), "0", m.what() + " " + m.remedy(),
					m.line(exchange.line()) + ":" + m.column(exchange.line()))));
			if (!exchange.refused().isEmpty()) {
				rows.add(List.of(exchange.line(), "0", exchange.refused(), ""));
			}
		}
		return rows;
	}
}
