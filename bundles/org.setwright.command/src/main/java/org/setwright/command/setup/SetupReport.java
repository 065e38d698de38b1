package org.setwright.command.setup;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.editions.EditionState;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Surroundings;

/**
 * What jobs come to.
 *
 * @param edition which edition the book is at, and who signed it; empty when it lives in no repository
 * @param all whether the whole book was asked for: then the text is one line a job
 * @param reasons whether the text gives the reason and source behind each setting
 */
record SetupReport(Surroundings at, OpenBook open, Optional<EditionState> edition, List<JobResult> results, boolean all, boolean reasons) implements Report {

	@Override
	public String word() {
		return "setup";
	}

	@Override
	public int exitCode() {
		return results.stream().allMatch(r -> r.notMet().isEmpty()) ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	@Override
	public void text(Page page) {
		open.problems().text(page);
		page.blank();
		if (all) {
			new AllJobsText(page, at, open).print(results, edition);
		} else {
			new OneJobText(page, at, open, edition, reasons).print(results.get(0));
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		open.json(json);
		open.problems().json(json);
		if (edition.isPresent()) {
			edition.get().json(json);
		}
		json.writeArrayFieldStart("jobs");
		for (JobResult result : results) {
			new JobJson(json).write(result);
		}
		json.writeEndArray();
	}

	@Override
	public List<List<String>> csv() {
		return SettingRows.of(results);
	}
}
