package org.setwright.trade.settings;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/** In which mode the controller powers the changeover valve. */
public enum ChangeoverValve implements Choice {
	@Called(label = "energised in cooling", meaning = "The valve is powered while cooling: the O convention.")
	ENERGISED_IN_COOLING,
	@Called(label = "energised in heating", meaning = "The valve is powered while heating: the B convention.")
	ENERGISED_IN_HEATING
}
