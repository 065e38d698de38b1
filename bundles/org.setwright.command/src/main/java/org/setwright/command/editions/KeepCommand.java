package org.setwright.command.editions;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.git.WorkInHand;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Keeps the work in hand as an edition. */
@Command(name = "keep",
		description = "Keep the work in hand as an edition. Without --because or --message it only shows what would be kept, and a message for it.")
public final class KeepCommand extends EditionsQuestion {
	@Option(names = "--because", paramLabel = "TEXT", description = "Why: it is added to a message that says what changed.")
	private String because;
	@Option(names = "--message", paramLabel = "TEXT", description = "The whole message, instead.")
	private String message;
	@Option(names = "--begin", description = "Start a repository in the folder of the book when it lives in none.")
	private boolean begin;

	/** @param surroundings where the program runs */
	public KeepCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected EditionsOf editions(Path folder) throws NotDone {
		return begin ? EditionsOf.start(folder, at().catalogue(), EditionState.ceilings(at())) : super.editions(folder);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		if (because != null && message != null) {
			throw Refusal.wrongUsage("Write --because or --message, not both.");
		}
		WorkInHand seen = editions.work();
		String suggested = editions.suggestion();
		ChangeItems changes = new ChangeItems().changes(editions.notKept(), false, at().columns());
		if (because == null && message == null) {
			String last = seen.notKept().isEmpty() ? "Nothing has changed since the last edition." : "Nothing is kept yet: say why with --because.";
			if (!seen.notKept().isEmpty()) {
				changes.all().add(new Item().with("sort", "message", "what", suggested)
						.line(0, Style.STRONG, "Message: " + suggested.lines().findFirst().orElse("")));
			}
			return Told.fine("keep", book, book.name() + ": not kept yet", "changes", ChangeItems.COLUMNS, changes.all(), last);
		}
		Optional<Kept> before = editions.last();
		Kept kept = editions.keep(seen, message != null ? message : withReason(suggested), Optional.empty());
		changes.all().add(new Item().with("sort", "kept", "name", kept.id().hash(), "what", kept.title()));
		return Told.fine("keep", book, book.name() + ": kept", "changes", ChangeItems.COLUMNS, changes.all(),
				before.filter(kept::equals).isPresent() ? "Kept. No rule, table or job changed, so the edition is still " + kept.id() + "." : "Kept as edition "
						+ kept.id() + ": " + kept.title());
	}

	private String withReason(String suggested) {
		List<String> lines = suggested.lines().toList();
		String rest = String.join("\n", lines.subList(1, lines.size())).strip();
		return lines.get(0) + "\n\n" + because.strip() + (rest.isEmpty() ? "" : "\n\n" + rest);
	}
}
