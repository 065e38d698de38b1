package org.setwright.command.asking;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** An answer that is an outline about one job. @param word the word it answers @param title what was asked */
record OutlineReport(String word, OpenBook open, JobCase jobCase, String title, List<Steps.Step> steps) implements Report {

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, title);
		for (Steps.Step step : steps) {
			if (step.depth() == 0) {
				page.blank();
			}
			page.line(2 * step.depth(), step.style(), step.words() + (step.at().isEmpty() ? "" : "   [" + step.at() + "]"));
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", jobCase.name());
		json.writeStringField("path", jobCase.path());
		json.writeArrayFieldStart("outline");
		for (Steps.Step step : steps) {
			json.writeStartObject();
			json.writeNumberField("depth", step.depth());
			json.writeStringField("kind", step.kind());
			json.writeStringField("words", step.words());
			json.writeStringField("at", step.at());
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>();
		rows.add(List.of("depth", "kind", "words", "at"));
		steps.forEach(s -> rows.add(List.of(Integer.toString(s.depth()), s.kind(), s.words(), s.at())));
		return rows;
	}
}
