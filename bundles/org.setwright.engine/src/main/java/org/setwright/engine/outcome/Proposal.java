package org.setwright.engine.outcome;

import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** A value some rule proposes for a setting. @param firing how its conditions held */
public record Proposal(Setting setting, Value value, Firing firing) {
	/** @return the rule that proposes it */
	public Rule rule() {
		return firing.rule();
	}

	/** @return the weight it carries */
	public Authority authority() {
		return rule().authority();
	}
}
