package org.setwright.command.asking;

import java.util.concurrent.Callable;
import org.setwright.book.JobCase;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Report;
import org.setwright.command.check.CheckReport;
import org.setwright.command.opening.BookOption;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.Edition;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** A question about one job of a book that runs. */
public abstract class JobQuestion implements Callable<Integer> {
	@Parameters(index = "0", paramLabel = "JOB", description = "The job's name or file, or a part of it.")
	private String job;
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	protected JobQuestion(Surroundings surroundings) {
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	/** @return the answer */
	protected abstract Report report(OpenBook open, Edition edition, JobCase jobCase);

	@Override
	public Integer call() {
		OpenBook open = book.open();
		return delivery.deliver(open.compilation().edition().<Report>map(e -> report(open, e, open.job(job)))
				.orElseGet(() -> new CheckReport(open)));
	}
}
