package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.Book;
import org.setwright.command.answer.ExitCode;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.opening.Named;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import picocli.CommandLine.Option;

/** A word that joins two lines of work. */
abstract class JoiningQuestion extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("what", "at", "before", "here", "there");
	private final String word;

	@Option(names = "--here", paramLabel = "WHAT", description = "Of what both changed, this is right as it is here; may be given several times.")
	private List<String> here = new ArrayList<>();
	@Option(names = "--there", paramLabel = "WHAT",
			description = "Of what both changed, this is right as it is on the other line; may be given several times.")
	private List<String> there = new ArrayList<>();

	JoiningQuestion(Surroundings surroundings, String word) {
		super(surroundings);
		this.word = word;
	}

	protected abstract JoinPlan plan(EditionsOf editions) throws NotDone;

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		JoinPlan plan = decided(editions, plan(editions));
		String title = book.name() + ": joining " + plan.name();
		if (plan.joining().nothingNew()) {
			return Told.fine(word, book, title, "undecided", COLUMNS, List.of(), plan.name() + " has nothing that is not here.");
		} else if (!plan.conflicts().isEmpty()) {
			return new Told(word, book, title, "undecided", COLUMNS, plan.conflicts().stream().map(JoiningQuestion::item).toList(),
					"Nothing was joined: decide " + Problems.counted(plan.conflicts().size(), "change") + " with --here WHAT or --there WHAT.", ExitCode.PROBLEMS);
		}
		Kept joined = editions.lines().keepJoined(plan, "Joined " + plan.name(), Optional.empty());
		return Told.fine(word, book, title, "undecided", COLUMNS, List.of(), "Joined; the edition is now " + joined.shown() + ".");
	}

	private JoinPlan decided(EditionsOf editions, JoinPlan plan) throws NotDone {
		Map<String, Boolean> wanted = new LinkedHashMap<>();
		here.forEach(w -> wanted.put(w, true));
		there.forEach(w -> wanted.put(w, false));
		for (Map.Entry<String, Boolean> one : wanted.entrySet()) {
			if (plan.conflicts().isEmpty()) {
				throw Refusal.wrongUsage("Nothing called \"" + one.getKey() + "\" has to be decided.");
			}
			Conflict conflict = Named.one("undecided change", one.getKey(), plan.conflicts(), Conflict::what);
			plan = plan.decided(editions.repo(), conflict, one.getValue() ? conflict.ours() : conflict.theirs());
		}
		return plan;
	}

	private static Item item(Conflict conflict) {
		Item item = new Item().with("what", conflict.what(), "at", conflict.path(), "before", conflict.base().orElse(""), "here", conflict.ours()
				.orElse(""),
				"there", conflict.theirs().orElse(""));
		item.line(0, Style.ALARM, "BOTH CHANGED " + conflict.what() + "   [" + conflict.path() + "]");
		side(item, "here", conflict.ours());
		side(item, "there", conflict.theirs());
		return item;
	}

	private static void side(Item item, String where, Optional<String> text) {
		item.line(2, Style.STRONG, where + (text.isEmpty() ? ": gone" : ":"));
		text.ifPresent(t -> t.lines().forEach(l -> item.verbatim(4, Style.PLAIN, l.replace("\t", "    "))));
	}
}
