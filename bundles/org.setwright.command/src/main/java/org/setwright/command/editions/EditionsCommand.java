package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.lineage.RuleStep;
import org.setwright.editions.signing.SignOffs;
import org.setwright.editions.signing.SignedOff;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists the editions of a book, of one file or of one rule. */
@Command(name = "editions", description = "Show the editions of a book, the newest first: who kept which, when and why, and who signed it.")
public final class EditionsCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("edition", "on", "by", "title", "reason", "change", "signed");

	@Option(names = "--rule", paramLabel = "RULE", description = "Only those that made or changed this rule, through new names and files.")
	private String rule;
	@Option(names = "--file", paramLabel = "FILE", description = "Only those that changed this file of the book.")
	private String file;

	/** @param surroundings where the program runs */
	public EditionsCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		if (rule != null && file != null) {
			throw Refusal.wrongUsage("Name a rule or a file, not both.");
		}
		SignOffs signed = editions.signOffs();
		List<Item> items = new ArrayList<>();
		String title = book.name();
		if (rule != null) {
			Answer answer = editions.answers(List.of(Words.rule(editions.inHand(), rule))).get(0);
			title += ": " + answer.rule().shown();
			for (RuleStep step : answer.steps()) {
				items.add(item(step.edition(), step.change().what(), signed));
			}
		} else {
			title += file == null ? "" : ": " + file;
			for (Kept kept : file == null ? editions.history() : editions.history(file)) {
				items.add(item(kept, "", signed));
			}
		}
		List<String> notKept = editions.work().notKept();
		return Told.fine("editions", book, title, "editions", COLUMNS, items, (items.isEmpty() ? "Nothing has been kept yet. " : "")
				+ (notKept.isEmpty() ? "" : Problems.counted(notKept.size(), "file") + " not kept: " + String.join(", ", notKept)));
	}

	private static Item item(Kept kept, String change, SignOffs signed) {
		Optional<SignedOff> signature = signed.of(kept);
		Item item = Words.item(kept).with("change", change, "signed", signature.map(SignedOff::shown).orElse(""));
		item.line(2, Style.STRONG, kept.id() + "  " + kept.on().toLocalDate() + "  " + kept.by().name() + "  " + kept.title());
		if (!change.isEmpty()) {
			item.line(14, Style.PLAIN, change);
		}
		signature.ifPresent(s -> item.line(14, Style.GOOD, s.shown()));
		return item;
	}
}
