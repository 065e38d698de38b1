package org.setwright.command.editions;

import org.setwright.book.Book;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Compares two editions, or an edition with the work in hand. */
@Command(name = "changes", description = "Show what changed between two editions: by rule, and which job gets what else by which change.")
public final class ChangesCommand extends EditionsQuestion {
	@Parameters(index = "0", arity = "0..1", paramLabel = "FROM", defaultValue = "last",
			description = "The earlier edition: its first digits, a line, a mark, \"last\" or \"signed\"; the last one when left out.")
	private String from;
	@Parameters(index = "1", arity = "0..1", paramLabel = "TO", defaultValue = Words.WORK,
			description = "The later one; the work in hand when left out.")
	private String to;
	@Option(names = "--texts", description = "Show each rule and setting before and after, side by side.")
	private boolean texts;

	/** @param surroundings where the program runs */
	public ChangesCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		BookChanges changes = editions.changes(Words.book(editions, from), Words.book(editions, to));
		ProgressLine progress = new ProgressLine(at(), "jobs");
		Impact impact = editions.impact(changes, progress).orElseThrow();
		progress.finished();
		ChangeItems items = new ChangeItems().changes(changes, texts, at().columns()).impact(impact);
		String last = changes.none() ? "Both hold the same." : !impact.fault().isEmpty() ? impact.fault()
				: impact.jobs().isEmpty() ? "None of the " + Problems.counted(impact.run(), "job") + " comes to anything else."
						: Problems.counted(impact.jobs().size(), "job") + " of " + impact.run() + " come to something else.";
		return Told.fine("changes", book, "From " + changes.before().shown() + " to " + changes.after().shown(), "changes", ChangeItems.COLUMNS,
				items.all(), last);
	}
}
