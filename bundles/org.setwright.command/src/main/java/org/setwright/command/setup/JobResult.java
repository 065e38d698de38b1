package org.setwright.command.setup;

import java.util.List;
import java.util.Optional;
import org.setwright.book.JobCase;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Point;
import org.setwright.check.cases.SettingPoint;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;

/** A job case and what it came to. */
record JobResult(JobCase jobCase, Outcome outcome) {

	/** @return every expectation, in file order */
	List<Point> expectations() {
		return checked().asked();
	}

	/** @return the expectations that are not met */
	List<Point> notMet() {
		return checked().notMet();
	}

	private CheckedJob checked() {
		return CheckedJob.of(jobCase, outcome);
	}

	/** @return the setting that the first expectation that is not met is about, when it is about one */
	Optional<String> firstSettingNotMet() {
		return notMet().stream().filter(SettingPoint.class::isInstance).map(Point::what).findFirst();
	}

	/** @return how many settings have a proposal that a stronger one outranks */
	long outranked() {
		return outcome.settings().stream().filter(s -> !s.proposals().isEmpty()).map(SettingOutcome::outranked)
				.filter(o -> !o.isEmpty()).count();
	}

	/** @return for example "12 settled, 1 outranked, 0 disputed, 1 gap" */
	String counted() {
		return outcome.count(State.SETTLED) + " settled, " + outranked() + " outranked, " + outcome.count(State.DISPUTED)
				+ " disputed, " + outcome.count(State.GAP) + " gap" + (outcome.count(State.GAP) == 1 ? "" : "s");
	}
}
