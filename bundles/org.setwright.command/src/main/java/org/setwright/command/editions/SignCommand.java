package org.setwright.command.editions;

import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.SignedOff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Signs an edition off. */
@Command(name = "sign",
		description = "Sign an edition off: its job cases are run, and what they come to is kept in the signature. With a key where your Git "
				+ "signs with one.")
public final class SignCommand extends EditionsQuestion {
	static final List<String> COLUMNS = List.of("edition", "mark", "on", "by", "cases", "note", "key");

	@Parameters(index = "0", arity = "0..1", paramLabel = "EDITION", defaultValue = "last",
			description = "The edition to sign; the last one when left out.")
	private String edition;
	@Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "What to add, in a sentence.")
	private String note;

	/** @param surroundings where the program runs */
	public SignCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		Kept kept = editions.edition(edition);
		ProgressLine progress = new ProgressLine(at(), "jobs");
		SignedOff signed = editions.signOffs().sign(kept, editions.inHand().content(), editions.repo().user(), note, progress);
		progress.finished();
		Item item = new Item().with("edition", kept.id().hash(), "mark", signed.mark(), "on", signed.on().toString(), "by", signed.by().toString(), "cases",
				signed.cases(),
				"note", signed.note(), "key", signed.key().words());
		item.line(2, Style.PLAIN, "edition " + kept.shown() + ": " + kept.title());
		item.line(2, Style.GOOD, signed.shown());
		item.line(2, Style.PLAIN, "cases: " + signed.cases());
		item.line(2, Style.QUIET, "mark: " + signed.mark());
		return Told.fine("sign", book, book.name() + ": signed", "signed", COLUMNS, List.of(item), "");
	}
}
