package org.setwright.command.check;

import java.util.concurrent.Callable;
import org.setwright.command.answer.Delivery;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Reads and checks a book. */
@Command(name = "check", description = "Read a rule book, check every rule, table and job in it, and list the problems.")
public final class CheckCommand implements Callable<Integer> {
	@Mixin
	private final BookOption book;
	@Mixin
	private final Delivery delivery;

	/** @param surroundings where the program runs */
	public CheckCommand(Surroundings surroundings) {
		book = new BookOption(surroundings);
		delivery = new Delivery(surroundings);
	}

	@Override
	public Integer call() {
		return delivery.deliver(new CheckReport(book.open()));
	}
}
