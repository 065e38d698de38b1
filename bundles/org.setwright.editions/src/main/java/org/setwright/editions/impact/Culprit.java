package org.setwright.editions.impact;

import java.util.Optional;
import org.setwright.editions.compare.RuleChange;

/**
 * A change that can be made alone.
 *
 * @param rule what became of a rule; empty when it is no rule that changed
 * @param shown for people
 */
public record Culprit(Optional<RuleChange> rule, String shown) {
	/** What is known of the job changed. */
	public static final Culprit ANSWERS = new Culprit(Optional.empty(), "the job's own answers changed");
	/** What the book says of its own settings changed. */
	public static final Culprit SETTINGS = new Culprit(Optional.empty(), "the settings of the shop's own changed");

	/** @return the change of a rule */
	static Culprit of(RuleChange rule) {
		return new Culprit(Optional.of(rule), rule.shown());
	}
}
