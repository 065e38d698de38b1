package org.setwright.engine.outcome;

import java.util.List;
import java.util.Optional;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/**
 * What one setting comes to on one job.
 *
 * @param need whether this job needs it
 * @param proposals strongest authority first, then in rule order
 * @param heldOpen the rules held open by unknowns that could still change it
 */
public record SettingOutcome(Setting setting, State state, Need need, List<Proposal> proposals,
		List<HeldOpen> heldOpen) {
	public SettingOutcome {
		proposals = List.copyOf(proposals);
		heldOpen = List.copyOf(heldOpen);
	}

	/** The outcome in one word. */
	public enum State {
		/** The strongest proposals agree. */
		SETTLED,
		/** The strongest proposals name different values: a person has to decide. */
		DISPUTED,
		/** Needed, and nothing proposes it: a person has to decide. */
		GAP,
		/** Nothing proposes it, and it is not yet known whether the job needs it. */
		PERHAPS
	}

	/** Whether a job needs a setting. */
	public enum Need {
		NEEDED, NOT_NEEDED, UNKNOWN
	}

	/** @return the value, when settled */
	public Optional<Value> value() {
		return state == State.SETTLED ? Optional.of(proposals.get(0).value()) : Optional.empty();
	}

	/** @return the proposals of the strongest authority: they decide, or dispute */
	public List<Proposal> deciding() {
		return proposals.stream().filter(p -> p.authority() == proposals.get(0).authority()).toList();
	}

	/** @return the weaker proposals of the value that is decided: nothing outranks them */
	public List<Proposal> agreeing() {
		return weaker(true);
	}

	/** @return the proposals of another value that a stronger authority outranks */
	public List<Proposal> outranked() {
		return weaker(false);
	}

	private List<Proposal> weaker(boolean agreeing) {
		return proposals.stream().filter(p -> p.authority() != proposals.get(0).authority())
				.filter(p -> value().filter(p.value()::same).isPresent() == agreeing).toList();
	}
}
