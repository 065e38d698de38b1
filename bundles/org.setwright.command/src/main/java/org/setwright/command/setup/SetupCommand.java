package org.setwright.command.setup;

import java.util.List;
import java.util.concurrent.Callable;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.editions.EditionState;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Runs one job, or all. */
@Command(name = "setup", description = "Show what to set on the controller of a job, and the rule behind each setting.")
public final class SetupCommand implements Callable<Integer> {
	private final Surroundings surroundings;

	@Parameters(index = "0", arity = "0..1", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Option(names = "--all", description = "Every job of the book, against what it expects.")
	private boolean all;
	@Option(names = "--reasons", description = "Print under each setting why its rule says so, and its source.")
	private boolean reasons;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public SetupCommand(Surroundings surroundings) {
		this.surroundings = surroundings;
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		if (all == (job != null)) {
			throw Refusal.wrongUsage("Name one job, or write --all for every job of the book; the word \"jobs\" lists them.");
		}
		return delivery.deliver(report(book.open()));
	}

	private Report report(OpenBook open) {
		if (open.compilation().edition().isEmpty()) {
			return new CheckReport(open);
		}
		Edition edition = open.compilation().edition().get();
		List<JobCase> wanted = all ? open.book().jobs() : List.of(open.job(job));
		List<JobResult> results = wanted.stream().map(j -> new JobResult(j, edition.run(j.job()))).toList();
		return new SetupReport(surroundings, open, EditionState.of(surroundings, open.book()), results, all, reasons);
	}
}
