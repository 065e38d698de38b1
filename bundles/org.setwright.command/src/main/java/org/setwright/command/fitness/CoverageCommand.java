package org.setwright.command.fitness;

import java.util.concurrent.Callable;
import org.setwright.check.coverage.Coverage;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Counts what the saved jobs try out. */
@Command(name = "coverage", description = "Show which rules, conditions, table rows and values the saved jobs never try out.")
public final class CoverageCommand implements Callable<Integer> {
	private final Surroundings surroundings;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public CoverageCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(edition -> {
			ProgressLine progress = new ProgressLine(surroundings, "jobs");
			Coverage coverage = Coverage.of(edition, open.book().jobs(), progress).orElseThrow();
			progress.finished();
			return new CoverageReport(open, coverage);
		}).orElseGet(() -> new CheckReport(open)));
	}
}
