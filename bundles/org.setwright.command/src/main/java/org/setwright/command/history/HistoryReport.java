package org.setwright.command.history;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setwright.book.history.HistoryResult;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;

/** What came of an import or export. @param to what was written */
record HistoryReport(String word, HistoryResult result, String to) implements Report {

	@Override
	public int exitCode() {
		return result.problems().isEmpty() ? ExitCode.FINE : ExitCode.PROBLEMS;
	}

	@Override
	public void text(Page page) {
		new Problems(result.problems()).text(page);
		page.blank();
		if (result.problems().isEmpty()) {
			page.line(0, Style.GOOD, Problems.counted(result.jobs(), "job") + " written to " + to + ".");
		} else {
			page.line(0, Style.ALARM, Problems.counted(result.problems().size() + (long) result.more(), "problem") + (result.more() > 0
					? ", of which the first " + result.problems().size() + " are listed" : "") + ". Nothing was written.");
		}
	}

	@Override
	public void json(JsonGenerator json) throws IOException {
		new Problems(result.problems()).json(json);
		json.writeNumberField("more", result.more());
		json.writeNumberField("jobs", result.problems().isEmpty() ? result.jobs() : 0);
		json.writeStringField("to", to);
	}

	@Override
	public List<List<String>> csv() {
		return new ArrayList<>(new Problems(result.problems()).csv());
	}
}
