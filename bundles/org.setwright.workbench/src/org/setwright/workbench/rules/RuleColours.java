package org.setwright.workbench.rules;

import org.setwright.workbench.look.ColouredText;

/** Colours the text of rules. */
public final class RuleColours extends ColouredText {

	/** Made by the editor. */
	public RuleColours() {
		super(RuleWords::in);
	}
}
