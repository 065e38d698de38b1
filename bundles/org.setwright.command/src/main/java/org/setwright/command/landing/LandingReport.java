package org.setwright.command.landing;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.landing.LandingPlan;

/** A job's landing plan. */
record LandingReport(OpenBook open, JobCase jobCase, LandingPlan plan) implements Report {

	@Override
	public String word() {
		return "landing";
	}

	@Override
	public int exitCode() {
		return ExitCode.FINE;
	}

	@Override
	public void text(Page page) {
		new LandingText(page).lay(jobCase.name(), plan);
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		json.writeStringField("job", jobCase.name());
		json.writeStringField("path", jobCase.path());
		new LandingJson(json).write(plan);
	}

	@Override
	public List<List<String>> csv() {
		return LandingRows.of(plan);
	}
}
