package org.setwright.engine.outcome;

import java.util.List;
import java.util.Optional;
import org.setwright.engine.later.Later;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/**
 * Everything one job comes to under one edition of a rule book. Views and commands render this and compute nothing.
 * Immutable.
 *
 * @param job the job, calculated facts included
 * @param settings every setting that is needed, perhaps needed or proposed, in catalogue order
 * @param firings every rule that spoke, once for each way its conditions held, in rule order
 * @param heldOpen every rule that neither spoke nor can be ruled out, with the unknowns that hold it open
 * @param findings in the order of their names
 * @param cautions most serious first
 * @param proofs what {@link #startUp} comes to once it is asked for
 * @param open what {@link #toFindOut} comes to once it is asked for
 */
public record Outcome(Job job, List<SettingOutcome> settings, List<Firing> firings, List<HeldOpen> heldOpen,
		List<Finding> findings, List<Caution> cautions, Later<List<StartUpCheck>> proofs, Later<List<ToFindOut>> open) {
	public Outcome {
		settings = List.copyOf(settings);
		firings = List.copyOf(firings);
		heldOpen = List.copyOf(heldOpen);
		findings = List.copyOf(findings);
		cautions = List.copyOf(cautions);
	}

	/** @return what to prove at start-up, in the order of a start-up; held-open checks after the certain ones of a phase */
	public List<StartUpCheck> startUp() {
		return proofs.get();
	}

	/** @return the unknowns worth looking up, the one that holds most settings open first */
	public List<ToFindOut> toFindOut() {
		return open.get();
	}

	/** @return what {@code setting} comes to; empty when it is neither needed nor proposed */
	public Optional<SettingOutcome> setting(Setting setting) {
		return settings.stream().filter(s -> s.setting().equals(setting)).findFirst();
	}

	/** @return how many settings are in {@code state} */
	public long count(SettingOutcome.State state) {
		return settings.stream().filter(s -> s.state() == state).count();
	}
}
