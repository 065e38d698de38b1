package org.setwright.command.words;

import java.util.concurrent.Callable;
import org.setwright.command.answer.Delivery;
import org.setwright.command.answer.Refusal;
import org.setwright.command.terminal.Surroundings;
import org.setwright.trade.catalogue.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Looks up the trade's words. */
@Command(name = "words", description = "Look up what a fact, an answer or a setting is called, what it means and what it may be.")
public final class WordsCommand implements Callable<Integer> {
	@Parameters(arity = "0..*", paramLabel = "WORD", description = "A name or a part of one; everything when left out.")
	private String[] words = {};
	@Mixin
	private final Delivery delivery;
	private final Catalogue catalogue;

	/** @param surroundings where the program runs */
	public WordsCommand(Surroundings surroundings) {
		delivery = new Delivery(surroundings);
		catalogue = surroundings.catalogue();
	}

	@Override
	public Integer call() {
		String wanted = String.join(" ", words).strip();
		WordsReport report = WordsReport.about(wanted, catalogue);
		if (report.entries().isEmpty()) {
			throw Refusal.wrongUsage("The catalogue has no fact, answer or setting with \"" + wanted
					+ "\" in its name; write \"words\" alone to see them all.");
		}
		return delivery.deliver(report);
	}
}
