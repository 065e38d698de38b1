package org.setwright.command.startup;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.setwright.command.answer.Problems;
import org.setwright.command.answer.RuleText;
import org.setwright.command.opening.Hint;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.StartUpPhase;

/** The start-up checks of one job from the cautions to the hand-over, numbered; one perhaps needed is only named. */
record StartupText(Page page, StartupReport report) {
	private static final int NUMBER = 3;
	private static final int HEADING = 8;
	private static final int INDENT = 2 + NUMBER + 2;

	/** @return the cautions that come before any start-up: stop, danger and licensed work */
	static List<Caution> grave(Outcome outcome) {
		return outcome.cautions().stream().filter(c -> c.kind().compareTo(CautionKind.LICENSED_WORK) <= 0).toList();
	}

	void print() {
		List<StartUpCheck> checks = report.outcome().startUp();
		report.open().problems().text(page);
		page.blank().line(0, Style.STRONG, report.jobCase().name() + ": start-up");
		page.line(0, Style.PLAIN, counted(checks));
		page.line(0, Style.QUIET, report.jobCase().path() + " in the book " + report.open().book().name());
		cautions();
		StartUpPhase heading = null;
		int number = 1;
		for (StartUpCheck check : checks) {
			if (check.phase() != heading) {
				heading = check.phase();
				page.blank().line(0, Style.STRONG, heading.label().toUpperCase(Locale.ROOT));
			}
			check(check, number++);
		}
		Hint.text(page, hints());
	}

	private static String counted(List<StartUpCheck> checks) {
		long perhaps = checks.stream().filter(c -> !c.certain()).count();
		long undecided = checks.stream().filter(c -> !c.undecided().isEmpty()).count();
		return Problems.counted(checks.size() - perhaps, "check") + (perhaps == 0 ? "" : ", " + perhaps + " perhaps needed")
				+ (undecided == 0 ? "" : ", " + undecided + " NOT TO BE STARTED before a person has decided");
	}

	private void cautions() {
		CautionKind heading = null;
		for (Caution caution : grave(report.outcome())) {
			if (caution.kind() != heading) {
				heading = caution.kind();
				page.blank().line(0, heading == CautionKind.LICENSED_WORK ? Style.ATTENTION : Style.ALARM,
						heading.label().toUpperCase(Locale.ROOT));
			}
			page.row(2, new Cell(1, Style.PLAIN, "*"), Cell.rest(Style.PLAIN, caution.sentence()));
		}
	}

	private void check(StartUpCheck check, int number) {
		page.row(2, new Cell(NUMBER, Style.STRONG, Integer.toString(number)),
				Cell.rest(Style.STRONG, (check.certain() ? "" : "Perhaps needed. ") + report.said(check.callFor())));
		if (!check.undecided().isEmpty()) {
			row("STOP", Style.ALARM, "Do not start this before a person has decided: " + StartupReport.settings(check) + ".");
		}
		if (check.certain()) {
			row("see", Style.PLAIN, report.said(check.see()));
			row("if not", Style.PLAIN, report.said(check.ifNot()));
			check.pause().ifPresent(p -> row("wait", Style.ATTENTION, report.said(p)));
		}
		if (!check.toFindOut().isEmpty()) {
			row("find out", Style.ATTENTION, StartupReport.places(check));
		}
		row("rule", Style.QUIET, check.saidBy().stream().map(RuleText::nameAndAuthority).collect(Collectors.joining(", ")));
		if (report.reasons()) {
			check.saidBy().forEach(r -> row("", Style.QUIET, RuleText.because(r)));
		}
	}

	private void row(String heading, Style style, String words) {
		page.row(INDENT, new Cell(HEADING, style == Style.PLAIN ? Style.QUIET : style, heading), Cell.rest(style, words));
	}

	private List<Hint> hints() {
		String job = OpenBook.shortName(report.jobCase());
		return List.of(Hint.of(report.at(), report.open(), "what to set before starting", "setup", job),
				Hint.of(report.at(), report.open(), "why a check is not in the list, and what would bring it in", "silent", job));
	}
}
