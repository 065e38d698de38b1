package org.setwright.check.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Acceptance;
import org.setwright.book.ExpectedItem;
import org.setwright.book.JobCase;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.JobEdit;
import org.setwright.engine.outcome.SettingOutcome;

/**
 * Accepts new outcomes: what a point came to becomes what is expected of it, and who decided so is noted in the job's file.
 *
 * @param on the day
 * @param by who accepts; not blank
 * @param because why; not blank
 */
public record Accepting(LocalDate on, String by, String because) {
	public Accepting {
		by = onALine(by);
		because = onALine(because);
		if (by.isEmpty() || because.isEmpty()) {
			throw new IllegalArgumentException("nobody accepts an outcome without a name and a reason");
		}
	}

	/** @return the edits of the job's file that accept {@code point}; none when it is met already */
	public List<JobEdit> edits(Point point) {
		if (point.met()) {
			return List.of();
		} else if (point instanceof ItemPoint item && item.wanted().other()) {
			List<JobEdit> edits = new ArrayList<>();
			item.there().forEach(t -> edits.addAll(List.of(new JobEdit.ItemExpected(t.exactly()), noted(t.exactly(), item))));
			return edits;
		} else if (point instanceof ItemPoint item) {
			ExpectedItem now = item.wanted().in(item.stands());
			return List.of(new JobEdit.ItemNotExpected(item.wanted()), new JobEdit.ItemExpected(now), noted(now, item));
		}
		SettingPoint setting = (SettingPoint) point;
		Expectation now = now(setting);
		return List.of(new JobEdit.Expected(setting.setting(), now),
				noted(setting.what(), setting.wanted().map(Expectation::text).orElse("not asked"), now.text()));
	}

	/** @return what will be expected of {@code point} once it is accepted, in the words of a job file */
	public static String becomes(Point point) {
		return point instanceof SettingPoint setting ? now(setting).text() : point.came();
	}

	private JobEdit.Accepted noted(ExpectedItem now, ItemPoint point) {
		return noted(now.list().one() + " " + now.text(), point.expected(), now.list().state());
	}

	private JobEdit.Accepted noted(String what, String was, String now) {
		return new JobEdit.Accepted(new Acceptance(what, onALine(was), onALine(now), on, by, because));
	}

	/** How far a number may be off, and that a rule is named, stays as it was. */
	private static Expectation now(SettingPoint point) {
		Optional<SettingOutcome> outcome = point.outcome();
		if (outcome.isEmpty()) {
			return new JobCase.NotNeeded(point.at());
		}
		return switch (outcome.get().state()) {
			case GAP -> new JobCase.Gap(point.at());
			case DISPUTED -> new JobCase.Dispute(point.at());
			case PERHAPS -> new JobCase.NotSet(point.at());
			case SETTLED -> settled(point, outcome.get());
		};
	}

	private static Expectation settled(SettingPoint point, SettingOutcome outcome) {
		Expectation before = point.wanted().orElse(null);
		if (before instanceof DecidedBy decided) {
			String rule = outcome.deciding().get(0).rule().name();
			boolean asked = decided.is().isPresent();
			return new DecidedBy(asked ? Optional.of(value(outcome, decided.is().get(), point)) : Optional.empty(),
					point.decides(decided.rule()) ? decided.rule() : rule, point.at());
		}
		return value(outcome, before instanceof Settled settled ? settled : null, point);
	}

	private static Settled value(SettingOutcome outcome, Settled before, SettingPoint point) {
		return new Settled(outcome.value().orElseThrow(), Optional.ofNullable(before).flatMap(Settled::within), point.at());
	}

	private static String onALine(String text) {
		return text.strip().replaceAll("\\s+", " ");
	}
}
