package org.setwright.workbench.setup;

import java.util.Optional;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/**
 * One line of the set-up, as shown.
 *
 * @param setting what it is about
 * @param outcome what it shows; empty when the setting is neither needed nor proposed
 * @param value the value, or the values that are disputed; a dash when there is none
 * @param mark which sign stands before it
 * @param state the state in words
 * @param rule the rules that decide, or dispute; empty when none does
 * @param authority the weight they carry; empty when none does
 * @param was what the setting came to before anything was typed, when that differs
 * @param expected what the job expects instead, when it expects something else
 */
public record SettingRow(Setting setting, Optional<SettingOutcome> outcome, String value, Mark mark, String state, String rule, String authority,
		Optional<String> was, Optional<String> expected) {

	/** The sign before a setting. */
	public enum Mark {
		/** Decided. */
		SETTLED,
		/** Decided by what is known, yet an unknown could still change it. */
		SETTLED_SO_FAR,
		/** Equal authority, different values. */
		DISPUTED,
		/** Needed and not decided. */
		GAP,
		/** Not known whether it is needed. */
		PERHAPS,
		/** Neither needed nor proposed. */
		NOT_NEEDED
	}

	/** @return whether somebody has to decide before the job can be set up */
	public boolean open() {
		return mark == Mark.DISPUTED || mark == Mark.GAP;
	}
}
