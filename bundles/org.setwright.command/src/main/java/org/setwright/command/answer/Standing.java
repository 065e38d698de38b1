package org.setwright.command.answer;

import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;

/** How a proposal fared. */
public enum Standing {
	DECIDES, AGREES, DISPUTED, OUTRANKED;

	/** @return how {@code proposal} (one of {@code outcome}'s) fared */
	public static Standing of(Proposal proposal, SettingOutcome outcome) {
		if (!outcome.deciding().contains(proposal)) {
			return outcome.agreeing().contains(proposal) ? AGREES : OUTRANKED;
		}
		return outcome.state() == State.DISPUTED ? DISPUTED : DECIDES;
	}

	/** @return for people and files */
	public String word() {
		return name().toLowerCase(java.util.Locale.ROOT);
	}
}
