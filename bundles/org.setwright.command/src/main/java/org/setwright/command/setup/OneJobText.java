package org.setwright.command.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.command.answer.RuleText;
import org.setwright.command.opening.Hint;
import org.setwright.command.opening.OpenBook;
import org.setwright.command.terminal.Cell;
import org.setwright.command.terminal.Page;
import org.setwright.command.terminal.Style;
import org.setwright.command.terminal.Surroundings;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Setting;

/** One job from the cautions down to what to type next. */
record OneJobText(Page page, Surroundings at, OpenBook open, boolean reasons) {
	private static final int CAUTION = 17;

	void print(JobResult result) {
		Outcome outcome = result.outcome();
		page.line(0, Style.STRONG, result.jobCase().name());
		page.line(0, Style.PLAIN, result.counted());
		page.line(0, Style.QUIET, result.jobCase().path() + " in the book " + open.book().name());
		cautions(outcome.cautions());
		new SettingsText(page, reasons).print(outcome.settings());
		expectations(result);
		toFindOut(outcome.toFindOut());
		Hint.text(page, hints(result));
	}

	private void cautions(List<Caution> cautions) {
		page.blank();
		for (Caution caution : cautions) {
			String raisedBy = caution.raisedBy().stream().map(f -> RuleText.name(f.rule())).distinct().collect(Collectors.joining(", "));
			page.row(0, new Cell(CAUTION, style(caution.kind()), caution.kind().label().toUpperCase(java.util.Locale.ROOT)),
					Cell.rest(Style.STRONG, caution.sentence()));
			page.row(0, new Cell(CAUTION, Style.PLAIN, ""), Cell.rest(Style.QUIET, raisedBy));
		}
	}

	private static Style style(CautionKind kind) {
		return switch (kind) {
			case STOP, DANGER -> Style.ALARM;
			case LICENSED_WORK, CHECK_AT_START_UP -> Style.ATTENTION;
			case NOTE -> Style.PLAIN;
		};
	}

	private void expectations(JobResult result) {
		List<Expected> all = result.expectations();
		List<Expected> notMet = result.notMet();
		if (all.isEmpty()) {
			return;
		}
		page.blank();
		if (notMet.isEmpty()) {
			page.line(0, Style.GOOD, "expectations of the job case: " + (all.size() == 1 ? "the one" : "all " + all.size()) + " met");
			return;
		}
		page.line(0, Style.ALARM, "EXPECTATIONS NOT MET: " + notMet.size() + " of " + all.size());
		for (Expected expected : notMet) {
			page.line(2, Style.PLAIN, expected.setting().label() + ": expected " + expected.wanted().text() + ", came to "
					+ expected.came() + " (" + expected.wanted().at() + ")");
		}
	}

	private void toFindOut(List<ToFindOut> unknowns) {
		if (unknowns.isEmpty()) {
			return;
		}
		page.blank().line(0, Style.STRONG, "still to find out");
		int width = unknowns.stream().mapToInt(u -> u.unknown().label().length()).max().orElse(0);
		for (ToFindOut unknown : unknowns) {
			String settings = unknown.holdsOpen().stream().map(Setting::label).collect(Collectors.joining(", "));
			page.row(2, new Cell(Math.min(width, page.width() / 2), Style.ATTENTION, unknown.unknown().label()),
					Cell.rest(Style.PLAIN, settings.isEmpty() ? "could raise a caution" : "could change " + settings));
		}
	}

	private List<Hint> hints(JobResult result) {
		String job = result.jobCase().name();
		List<Hint> hints = new ArrayList<>();
		SettingOutcome first = mostInteresting(result.outcome().settings());
		if (first != null) {
			hints.add(Hint.of(at, open, "why it comes to that, down to the job's own words", "why", job, first.setting().label()));
		}
		hints.add(Hint.of(at, open, "every job of the book against what it expects", "setup", "--all"));
		return hints;
	}

	/** A dispute or gap before anything settled, and among those an outranked one first. */
	private static SettingOutcome mostInteresting(List<SettingOutcome> settings) {
		return settings.stream().filter(s -> s.state() != SettingOutcome.State.SETTLED).findFirst()
				.or(() -> settings.stream().filter(s -> !s.outranked().isEmpty()).findFirst())
				.or(() -> settings.stream().findFirst()).orElse(null);
	}
}
