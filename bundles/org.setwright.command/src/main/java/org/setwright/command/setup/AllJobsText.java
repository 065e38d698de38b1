package org.setwright.command.setup;

import java.util.List;
import java.util.Optional;
import org.setwright.check.cases.Point;
import org.setwright.command.answer.Problems;
import org.setwright.command.editions.EditionState;
import org.setwright.command.opening.Hint;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.outcome.SettingOutcome.State;

/** Every job of a book, one row each, against what it expects. */
record AllJobsText(Page page, Surroundings at, OpenBook open) {
	private static final int LONGEST_NAME = 34;
	private static final int NUMBER = 8;

	void print(List<JobResult> results, Optional<EditionState> edition) {
		int width = Math.min(LONGEST_NAME, results.stream().mapToInt(r -> r.jobCase().name().length()).max().orElse(3));
		row(width, Style.STRONG, "job", "settled", "disputed", "gaps", "expectations");
		for (JobResult result : results) {
			job(width, result);
		}
		long notMet = results.stream().mapToLong(r -> r.notMet().size()).sum();
		long asked = results.stream().mapToLong(r -> r.expectations().size()).sum();
		page.blank();
		edition.ifPresent(e -> e.text(page));
		if (notMet == 0) {
			page.line(0, Style.GOOD, Problems.counted(results.size(), "job") + ", " + Problems.counted(asked, "expectation") + ": all met.");
		} else {
			page.line(0, Style.ALARM, Problems.counted(results.size(), "job") + ", " + notMet + " of "
					+ Problems.counted(asked, "expectation") + " not met.");
		}
		results.stream().filter(r -> !r.notMet().isEmpty()).findFirst().ifPresent(this::hint);
	}

	private void job(int width, JobResult result) {
		List<Point> notMet = result.notMet();
		int asked = result.expectations().size();
		String met = asked == 0 ? "none stated" : notMet.isEmpty() ? asked + " met" : notMet.size() + " of " + asked + " NOT MET";
		row(width, notMet.isEmpty() ? Style.PLAIN : Style.ALARM, result.jobCase().name(), count(result, State.SETTLED),
				count(result, State.DISPUTED), count(result, State.GAP), met);
		for (Point point : notMet) {
			page.line(4, Style.PLAIN, point.what() + ": " + point.sentence() + " (" + point.at() + ")");
		}
	}

	private static String count(JobResult result, State state) {
		long count = result.outcome().count(state);
		return count == 0 ? "-" : Long.toString(count);
	}

	private void row(int width, Style style, String name, String settled, String disputed, String gaps, String met) {
		page.row(0, new Cell(width, style, name), new Cell(NUMBER, style, settled), new Cell(NUMBER, style, disputed),
				new Cell(NUMBER, style, gaps), Cell.rest(style, met));
	}

	private void hint(JobResult result) {
		String job = OpenBook.shortName(result.jobCase());
		Hint.text(page, List.of(result.firstSettingNotMet().map(setting -> Hint.of(at, open, "why the first one came out so", "why", job, setting))
				.orElseGet(() -> Hint.of(at, open, "what the first one comes to", "setup", job))));
	}
}
