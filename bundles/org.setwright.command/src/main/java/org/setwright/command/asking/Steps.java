package org.setwright.command.asking;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.setwright.book.JobCase;
import org.setwright.book.Position;
import org.setwright.command.answer.RuleText;
import org.setwright.command.terminal.Style;
import org.setwright.engine.change.Alternative;
import org.setwright.engine.change.Alternatives;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/** An outline under construction: each step rests on the deeper ones below it. */
final class Steps {
	private final List<Step> steps = new ArrayList<>();

	/** One line. @param kind what it is, for other programs @param at where it stands; may be empty */
	record Step(int depth, String kind, Style style, String words, String at) {
	}

	List<Step> all() {
		return List.copyOf(steps);
	}

	Steps add(int depth, String kind, Style style, String words, String at) {
		steps.add(new Step(depth, kind, style, words, at));
		return this;
	}

	/** Adds what became of a rule on a job, with everything that keeps it from speaking. */
	void rule(int depth, WhyNot why, JobCase jobCase) {
		add(depth, why.status().words(), style(why.status()), RuleText.nameAndAuthority(why.rule()) + ": " + why.status().words(),
				why.rule().at().toString());
		for (Proposal proposal : why.outrankedBy()) {
			add(depth + 1, "outranked by", Style.PLAIN, "outranked by " + RuleText.nameAndAuthority(proposal.rule()) + ", which says "
					+ proposal.setting().label() + " " + proposal.value().text(), proposal.rule().at().toString());
		}
		why.blockers().forEach(b -> blocker(depth + 1, b, jobCase));
		if (!why.heldBy().isEmpty()) {
			add(depth + 1, "to find out", Style.ATTENTION,
					"open until known: " + why.heldBy().stream().map(JobField::label).sorted().collect(Collectors.joining("; ")), "");
		}
	}

	private void blocker(int depth, Blocker blocker, JobCase jobCase) {
		add(depth, "in the way", Style.PLAIN, blocker.sentence(), blocker.looked().stream().map(jobCase.positions()::get)
				.filter(Objects::nonNull).sorted().map(Position::toString).distinct().collect(Collectors.joining(", ")));
		blocker.makers().forEach(m -> rule(depth + 1, m, jobCase));
	}

	/** Adds what would change it. @param goal what for: "it would speak" */
	void changes(Alternatives alternatives, JobCase jobCase, String goal) {
		add(0, "heading", Style.STRONG, "What would change it", "");
		if (alternatives.found().isEmpty()) {
			add(1, "none", Style.PLAIN, alternatives.largest() == 0 ? "Nothing has to change." : alternatives.nothing(goal), "");
		}
		for (Alternative alternative : alternatives.found()) {
			String changes = alternative.changes().stream().map(c -> c.sentence(jobCase.job())).collect(Collectors.joining(", and "));
			add(1, alternative.onSite() ? "change on site" : "other job", Style.PLAIN,
					(alternative.onSite() ? "If " : "On another job, where ") + changes + ", " + goal + ".", "");
			if (!alternative.alsoChanges().isEmpty()) {
				add(2, "also changes", Style.QUIET, "this also changes: "
						+ alternative.alsoChanges().stream().map(Setting::label).collect(Collectors.joining(", ")), "");
			}
		}
		if (alternatives.largest() > 0) {
			add(1, "tried", Style.QUIET, (alternatives.found().isEmpty() ? "" : "Each of these has been tried and works. ") + "At most "
					+ alternatives.largest() + " changes at once are tried, and numbers that feed a calculation where its result passes a limit of a"
					+ " rule, all else being as it is now.", "");
		}
	}

	/** Adds how a rule came to speak. */
	void firing(int depth, String prefix, Firing firing) {
		add(depth, "rule", Style.PLAIN, prefix + RuleText.nameAndAuthority(firing.rule()), firing.rule().at().toString());
		firing.reasons().forEach(r -> add(depth + 1, "reason", Style.PLAIN, r.sentence(), ""));
	}

	private static Style style(WhyNot.Status status) {
		return switch (status) {
			case FIRED -> Style.STRONG;
			case OUTRANKED, SILENT -> Style.PLAIN;
			case HELD_OPEN -> Style.ATTENTION;
		};
	}
}
