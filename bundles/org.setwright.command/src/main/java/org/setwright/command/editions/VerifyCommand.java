package org.setwright.command.editions;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.ProgressLine;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.Lack;
import org.setwright.editions.signing.SignOffs;
import org.setwright.editions.signing.SignedOff;
import org.setwright.editions.signing.Verified;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells whether an edition may go out; for build servers and hooks. */
@Command(name = "verify",
		description = "Tell whether an edition may go out: its job cases are run anew, and it has to be signed when its book demands that. Ends "
				+ "with 1 when it may not.")
public final class VerifyCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("edition", "demanded", "signed", "cases", "what", "remedy");

	@Parameters(index = "0", arity = "0..1", paramLabel = "EDITION", defaultValue = "last", description = "The edition; the last one when left out.")
	private String edition;
	@Option(names = "--repository", paramLabel = "DIR",
			description = "Look into this repository, which needs no folder of files, as in a hook of a server.")
	private Path repository;
	@Option(names = "--within", paramLabel = "DIR", defaultValue = "", description = "Where the book is in that repository; its top when left out.")
	private String within;
	@Option(names = "--mark", paramLabel = "OBJECT", description = "The full name of a tag that is just arriving; may be given several times.")
	private List<String> marks = new ArrayList<>();

	/** @param surroundings where the program runs */
	public VerifyCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	public Integer call() {
		if (repository == null) {
			return super.call();
		}
		try (EditionsOf editions = EditionsOf.on(at().folder().resolve(repository), within, at().catalogue())) {
			return deliver(report(editions.shelf().book(editions.at(editions.edition(edition.equals("last") ? "HEAD" : edition))), editions));
		} catch (NotDone refused) {
			throw org.setwright.command.answer.Refusal.couldNotRun(refused.getMessage());
		}
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		Kept kept = editions.edition(edition);
		String commit = editions.repo().commit(edition.equals("last") ? "HEAD" : edition).orElse(kept.id().hash());
		ProgressLine progress = new ProgressLine(at(), "jobs");
		Verified verified = new SignOffs(editions.repo(), editions.shelf(), editions.log(commit), marks).verify(kept, editions.remarksAt(commit), progress);
		progress.finished();
		List<Item> items = new ArrayList<>();
		List<Lack> lacks = verified.fit() ? List.of(new Lack("", "")) : verified.lacks();
		for (Lack lack : lacks) {
			Item item = new Item().with("edition", kept.id().hash(), "demanded", verified.demanded().words(), "signed", verified.signed().map(SignedOff::shown)
					.orElse(""),
					"cases", verified.cases(), "what", lack.what(), "remedy", lack.remedy());
			if (items.isEmpty()) {
				item.line(2, Style.PLAIN, "cases: " + verified.cases());
				item.line(2, Style.PLAIN, "signature " + verified.demanded().words() + "; " + verified.signed().map(SignedOff::shown).orElse("not signed"));
			}
			if (!lack.what().isEmpty()) {
				item.line(2, Style.ALARM, lack.what()).line(4, Style.STRONG, lack.remedy());
			}
			items.add(item);
		}
		return new Told("verify", book, "Edition " + kept.shown() + ": " + kept.title(), "verified", COLUMNS, items,
				verified.fit() ? "It may go out." : "It may NOT go out.", verified.fit() ? ExitCode.FINE : ExitCode.PROBLEMS);
	}
}
