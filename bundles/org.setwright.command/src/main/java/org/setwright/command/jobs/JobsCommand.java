package org.setwright.command.jobs;

import java.util.concurrent.Callable;
import org.setwright.command.answer.Delivery;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Lists a book's jobs. */
@Command(name = "jobs", description = "List the job cases of a rule book.")
public final class JobsCommand implements Callable<Integer> {
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public JobsCommand(Surroundings surroundings) {
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		return delivery.deliver(new JobsReport(book.read()));
	}
}
