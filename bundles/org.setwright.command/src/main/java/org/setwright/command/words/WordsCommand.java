package org.setwright.command.words;

import java.util.concurrent.Callable;
import org.setwright.book.JobSchema;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Refusal;
import org.setwright.command.opening.BookOption;
import org.setwright.command.terminal.Surroundings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Looks up the trade's words. */
@Command(name = "words", description = "Look up what a fact, an answer or a setting is called, what it means and what it may be; with the settings the book adds.")
public final class WordsCommand implements Callable<Integer> {
	@Parameters(arity = "0..*", paramLabel = "WORD", description = "A name or a part of one; everything when left out.")
	private String[] words = {};
	@Option(names = "--schema", description = "Print a JSON Schema of the book's job files instead, for editors that complete and check by one.")
	private boolean schema;
	@Mixin
	private final Delivery delivery;
	@Mixin
	private final BookOption book;

	/** @param surroundings where the program runs */
	public WordsCommand(Surroundings surroundings) {
		delivery = new Delivery(surroundings);
		book = new BookOption(surroundings);
	}

	@Override
	public Integer call() {
		if (schema) {
			delivery.print(JobSchema.of(book.catalogue()));
			return ExitCode.FINE;
		}
		String wanted = String.join(" ", words).strip();
		WordsReport report = WordsReport.about(wanted, book.catalogue());
		if (report.entries().isEmpty()) {
			throw Refusal.wrongUsage("The catalogue has no fact, answer or setting with \"" + wanted
					+ "\" in its name; write \"words\" alone to see them all.");
		}
		return delivery.deliver(report);
	}
}
