package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.book.Book;
import org.setwright.command.answer.Refusal;
import org.setwright.command.answer.Report;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.lineage.Answer;
import org.setwright.editions.lineage.RuleStep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Tells who answers for each rule. */
@Command(name = "answers", description = "Show who answers for a rule: who last changed what in it, and why.")
public final class AnswersCommand extends EditionsQuestion {
	private static final List<String> COLUMNS = List.of("rule", "at", "edition", "on", "by", "what", "title", "reason", "notKept");
	private static final Pattern LINE = Pattern.compile("(.+):([1-9]\\d{0,6})");

	@Parameters(index = "0", arity = "0..1", paramLabel = "RULE",
			description = "A rule's name or a part of it, or a place as file:line; every rule when left out.")
	private String rule;

	/** @param surroundings where the program runs */
	public AnswersCommand(Surroundings surroundings) {
		super(surroundings);
	}

	@Override
	protected Report report(Book book, EditionsOf editions) throws NotDone {
		List<Item> items = new ArrayList<>();
		for (Answer answer : asked(editions)) {
			items.add(item(answer));
		}
		return Told.fine("answers", book, book.name() + ": who answers", "rules", COLUMNS, items, items.isEmpty() ? "There are no rules." : "");
	}

	private List<Answer> asked(EditionsOf editions) throws NotDone {
		Matcher place = rule == null ? null : LINE.matcher(rule);
		if (rule == null) {
			return editions.answers();
		} else if (place.matches()) {
			return List.of(editions.answerAt(place.group(1), Integer.parseInt(place.group(2)))
					.orElseThrow(() -> Refusal.wrongUsage("No rule stands at " + rule + ".")));
		}
		return editions.answers(List.of(Words.rule(editions.inHand(), rule)));
	}

	private static Item item(Answer answer) {
		Optional<RuleStep> step = answer.mattered().or(answer::last);
		Optional<Kept> kept = step.map(RuleStep::edition);
		String what = step.map(s -> s.change().what()).orElse("");
		String notKept = answer.inHand().map(c -> c.what()).orElse("");
		String at = answer.rule().file() + ":" + answer.rule().line();
		Item item = new Item().with("rule", answer.rule().name(), "at", at, "edition", kept.map(k -> k.id().hash()).orElse(""), "on",
				kept.map(k -> k.on().toString()).orElse(""),
				"by", kept.map(k -> k.by().toString()).orElse(""), "what", what, "title", kept.map(Kept::title).orElse(""), "reason", kept.map(Kept::reason)
						.orElse(""), "notKept", notKept);
		item.line(2, Style.STRONG, answer.rule().shown() + "   [" + at + "]");
		kept.ifPresent(k -> {
			item.line(6, Style.PLAIN, what + " by " + k.by().name() + " on " + k.on().toLocalDate() + ", in edition " + k.id() + ": " + k.title());
			k.reason().lines().filter(l -> !l.isBlank()).findFirst().ifPresent(reason -> item.line(6, Style.QUIET, reason));
		});
		answer.last().filter(l -> !l.equals(step.orElse(null))).ifPresent(l ->
				item.line(6, Style.QUIET, "since then: " + l.change().what() + " by " + l.edition().by().name()
				+ ", in edition " + l.edition().id()));
		if (!notKept.isEmpty()) {
			item.line(6, Style.ATTENTION, "not kept yet: " + notKept);
		}
		return item;
	}
}
