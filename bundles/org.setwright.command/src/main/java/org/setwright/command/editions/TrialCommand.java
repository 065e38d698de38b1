package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.OtherLines;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists lines of work, begins one, or goes over to one. */
@Command(name = "trial",
		description = "Show the lines of work, or go over to one; with --begin, start one here, for a trial beside the practice in force.")
public final class TrialCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("line", "open", "elsewhere", "edition", "on", "by", "title");

	@Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The line to go over to; all are listed when left out.")
	private String name;
	@Option(names = "--begin", description = "Begin this line here. Work that is not kept comes along.")
	private boolean begin;

	/** @param surroundings where the program runs */
	public TrialCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		OtherLines lines = editions.lines();
		if (name != null && begin) {
			lines.begin(name);
		} else if (name != null) {
			lines.open(name);
		}
		List<Item> items = new ArrayList<>();
		for (OtherLines.Line line : lines.all()) {
			String at = line.at().map(k -> "  " + k.shown() + ": " + k.title()).orElse("");
			Item item = new Item().with("line", line.name(), "open", line.open() ? "yes" : "no", "elsewhere", line.elsewhere() ? "yes" : "no", "edition",
					line.at().map(k -> k.id().hash()).orElse(""), "on", line.at().map(k -> k.on().toString()).orElse(""), "by", line.at().map(k -> k.by().toString())
							.orElse(""),
					"title", line.at().map(Kept::title).orElse(""));
			items.add(item.line(2, line.open() ? Style.STRONG : Style.PLAIN, line.name() + (line.open() ? " (open)" : line.elsewhere() ? " (elsewhere)" : "")
					+ at));
		}
		return Told.fine("trial", book, book.name() + ": lines of work", "lines", COLUMNS, items, items.isEmpty() ? "Nothing has been kept yet." : "");
	}
}
