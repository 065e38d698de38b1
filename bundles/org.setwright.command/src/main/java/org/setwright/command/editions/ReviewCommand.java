package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import org.setwright.book.Book;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.signing.Matter;
import org.setwright.editions.signing.Remarks;
import org.setwright.editions.signing.Review;
import org.setwright.editions.signing.SignedOff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows what there is to look at before an edition is signed. */
@Command(name = "review", description = "Show, change by change, what is new since the last signed edition, and what was remarked on it.")
public final class ReviewCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("rule", "what", "at", "before", "after", "matters", "open");

	@Parameters(index = "0", arity = "0..1", paramLabel = "EDITION", defaultValue = "last",
			description = "The edition to review; the last one when left out.")
	private String edition;

	/** @param surroundings where the program runs */
	public ReviewCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		Kept kept = editions.edition(edition);
		Review review = editions.signOffs().review(kept, Remarks.in(editions.inHand().content()));
		List<Item> items = new ArrayList<>();
		for (RuleChange change : review.changes().rules()) {
			List<Matter> matters = review.on(change);
			String at = change.rule().file() + ":" + change.rule().line();
			Item item = new Item().with("rule", change.rule().name(), "what", change.what(), "at", at, "before", change.before().map(r -> r.text()).orElse(""),
					"after", change.after().map(r -> r.text()).orElse(""), "matters", String.join(", ", matters.stream().map(Matter::thread).toList()),
					"open", matters.stream().anyMatch(Matter::open) ? "yes" : "no");
			item.line(2, Style.STRONG, change.shown() + "   [" + at + "]");
			MatterItems.of(matters).forEach(m -> m.lines().forEach(l -> item.line(l.indent() + 4, l.style(), l.words())));
			items.add(item);
		}
		String since = review.last().map(SignedOff::edition).map(e -> "since edition " + e.shown()).orElse("nothing was ever signed");
		return Told.fine("review", book, "Edition " + kept.shown() + ": " + since, "changes", COLUMNS, items,
				Problems.counted(review.changes().rules().size(), "rule") + " changed, " + (review.changes().settings().isEmpty() ? ""
						: Problems.counted(review.changes().settings().size(), "setting") + " changed, ") + Problems.counted(review.changes().jobs().size(), "job") + " changed, "
						+ Problems.counted(review.open().size(), "open matter") + ".");
	}
}
