package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/** How a sensor reaches the controller. */
public enum Connection implements Choice {
	@Called(label = "wired", meaning = "By a pair of conductors of its own.")
	WIRED,
	@Called(label = "wireless", meaning = "By radio.")
	WIRELESS
}
