package org.setwright.command.check;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.check.cases.Accepting;
import org.setwright.check.cases.Point;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.Hint;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;

/** What was accepted of a job. @param accepted the points as they stood before */
record AcceptReport(Surroundings at, OpenBook open, JobCase jobCase, List<Point> accepted) implements Report {

	@Override
	public String word() {
		return "accept";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		page.line(0, Style.STRONG, jobCase.name());
		if (accepted.isEmpty()) {
			page.line(2, Style.PLAIN, "It comes to what it expects already; nothing was changed.");
			return;
		}
		for (Point point : accepted) {
			page.line(2, Style.PLAIN, point.what() + ": " + was(point) + " before, " + Accepting.becomes(point) + " from now on");
		}
		page.line(0, Style.QUIET, "noted in " + jobCase.path());
		Hint.text(page, List.of(Hint.of(at, open, "every job against what it expects", "check")));
	}

	private static String was(Point point) {
		return point.expected().isEmpty() ? "not asked" : point.expected();
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", jobCase.name());
		json.writeStringField("path", jobCase.path());
		json.writeArrayFieldStart("accepted");
		for (Point point : accepted) {
			json.writeStartObject();
			json.writeStringField("what", point.what());
			json.writeStringField("was", was(point));
			json.writeStringField("now", Accepting.becomes(point));
			json.writeEndObject();
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		List<List<String>> rows = new ArrayList<>(List.of(List.of("job", "path", "what", "was", "now")));
		accepted.forEach(p -> rows.add(List.of(jobCase.name(), jobCase.path(), p.what(), was(p), Accepting.becomes(p))));
		return rows;
	}
}
