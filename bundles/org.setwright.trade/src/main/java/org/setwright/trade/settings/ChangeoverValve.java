package org.setwright.trade.settings;

import org.setwright.trade.catalogue.Choice;

/** In which mode the controller powers the changeover valve. */
public enum ChangeoverValve implements Choice {
	ENERGISED_IN_COOLING("energised in cooling", "The valve is powered while cooling: the O convention."),
	ENERGISED_IN_HEATING("energised in heating", "The valve is powered while heating: the B convention.");

	private final String label;
	private final String meaning;

	ChangeoverValve(String label, String meaning) {
		this.label = label;
		this.meaning = meaning;
	}

	@Override
	public String label() {
		return label;
	}

	@Override
	public String meaning() {
		return meaning;
	}
}
