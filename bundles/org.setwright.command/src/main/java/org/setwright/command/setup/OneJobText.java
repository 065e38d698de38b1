package org.setwright.command.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.check.cases.Point;
import org.setwright.command.answer.RuleText;
import org.setwright.command.editions.EditionState;
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
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/** One job from the cautions down to what to type next. */
record OneJobText(Page page, Surroundings at, OpenBook open, Optional<EditionState> edition, boolean reasons) {
	private static final int DETAIL = 5;

	void print(JobResult result) {
		Outcome outcome = result.outcome();
		page.line(0, Style.STRONG, result.jobCase().name());
		page.line(0, Style.PLAIN, result.counted());
		page.line(0, Style.QUIET, result.jobCase().path() + " in the book " + open.book().name());
		edition.ifPresent(e -> e.text(page));
		cautions(outcome.cautions());
		new SettingsText(page, reasons).print(outcome.settings());
		expectations(result);
		toFindOut(outcome.toFindOut());
		Hint.text(page, hints(result));
	}

	private void cautions(List<Caution> cautions) {
		CautionKind heading = null;
		for (Caution caution : cautions) {
			if (caution.kind() != heading) {
				heading = caution.kind();
				page.blank().line(0, style(heading), heading.label().toUpperCase(Locale.ROOT));
			}
			page.row(2, new Cell(1, style(heading), "*"), Cell.rest(Style.PLAIN, caution.sentence()));
			caution.raisedBy().stream().map(f -> RuleText.name(f.rule())).distinct().forEach(r -> page.line(DETAIL, Style.QUIET, r));
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
		List<Point> all = result.expectations();
		List<Point> notMet = result.notMet();
		if (all.isEmpty()) {
			return;
		}
		page.blank();
		if (notMet.isEmpty()) {
			page.line(0, Style.GOOD, "expectations of the job case: " + (all.size() == 1 ? "the one" : "all " + all.size()) + " met");
			return;
		}
		page.line(0, Style.ALARM, "EXPECTATIONS NOT MET: " + notMet.size() + " of " + all.size());
		for (Point point : notMet) {
			page.line(2, Style.PLAIN, point.what() + ": " + point.sentence() + " (" + point.at() + ")");
		}
	}

	private void toFindOut(List<ToFindOut> unknowns) {
		if (unknowns.isEmpty()) {
			return;
		}
		page.blank().line(0, Style.STRONG, "still to find out");
		int width = Math.min(page.width() / 2, unknowns.stream().mapToInt(u -> u.unknown().label().length()).max().orElse(0));
		for (ToFindOut unknown : unknowns) {
			if (!unknown.holdsOpen().isEmpty()) {
				String settings = unknown.holdsOpen().stream().map(Setting::label).collect(Collectors.joining(", "));
				page.row(2, new Cell(width, Style.ATTENTION, unknown.unknown().label()), Cell.rest(Style.PLAIN, "could change " + settings));
			}
		}
		String others = unknowns.stream().filter(u -> u.holdsOpen().isEmpty()).map(u -> ofAll(u.unknown())).distinct()
				.collect(Collectors.joining("; "));
		if (!others.isEmpty()) {
			page.line(2, Style.PLAIN, "could raise a caution: " + others);
		}
	}

	/** The same question about several facts of a kind is asked once. */
	private static String ofAll(JobField unknown) {
		return unknown.kind().many() && unknown.field().isPresent() ? unknown.kind().key() + ": " + unknown.field().get().label()
				: unknown.label();
	}

	private List<Hint> hints(JobResult result) {
		String job = OpenBook.shortName(result.jobCase());
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
