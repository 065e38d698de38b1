package org.setwright.command.setup;

import java.util.List;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;

/** A job case and what it came to. */
record JobResult(JobCase jobCase, Outcome outcome) {

	/** @return every expectation, in file order */
	List<Expected> expectations() {
		return jobCase.expected().entrySet().stream().map(e -> Expected.compare(e.getKey(), e.getValue(), outcome)).toList();
	}

	/** @return the expectations that are not met */
	List<Expected> notMet() {
		return expectations().stream().filter(e -> !e.met()).toList();
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
