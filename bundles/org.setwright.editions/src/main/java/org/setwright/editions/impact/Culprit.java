package org.setwright.editions.impact;

import java.util.Optional;
import org.setwright.editions.compare.RuleChange;

/** A change that can be made alone. @param rule what became of a rule; empty for the changed answers of the job itself */
public record Culprit(Optional<RuleChange> rule) {
	/** What is known of the job changed. */
	public static final Culprit ANSWERS = new Culprit(Optional.empty());

	/** @return for people */
	public String shown() {
		return rule.map(RuleChange::shown).orElse("the job's own answers changed");
	}
}
