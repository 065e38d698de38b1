package org.setwright.command.editions;

import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.written.WrittenRule;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings back what an earlier edition said. */
@Command(name = "restore",
		description = "Bring back a rule, or the whole book, as an earlier edition had it. Work that is not kept is never overwritten.")
public final class RestoreCommand extends EditionsQuestion {
	@Parameters(index = "0", paramLabel = "EDITION", description = "The edition: its first digits, a line, a mark, \"last\" or \"signed\".")
	private String edition;
	@Option(names = "--rule", paramLabel = "RULE", description = "Only this rule, as it was called then, or a part of its name.")
	private String rule;

	/** @param surroundings where the program runs */
	public RestoreCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		Kept kept = editions.edition(edition);
		String what = "the whole book";
		String at = "";
		if (rule == null) {
			editions.restore(kept);
		} else {
			WrittenRule old = Words.rule(editions.at(kept), rule);
			what = old.shown();
			at = editions.restore(kept, old.name());
		}
		Item item = new Item().with("edition", kept.id().hash(), "what", what, "at", at);
		item.line(2, Style.PLAIN, what + " is as in edition " + kept.shown() + (at.isEmpty() ? "" : "   [" + at + "]"));
		return Told.fine("restore", book, book.name(), "restored", List.of("edition", "what", "at"), List.of(item),
				"It is work in hand now: look at it with changes, then keep it.");
	}
}
