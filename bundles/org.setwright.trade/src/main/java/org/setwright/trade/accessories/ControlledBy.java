package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/** Who decides when an accessory runs. */
public enum ControlledBy implements Choice {
	@Called(label = "controller", meaning = "It is wired to the controller, which decides.")
	CONTROLLER,
	@Called(label = "own control", meaning = "A control of its own decides.")
	OWN_CONTROL,
	@Called(label = "equipment board", meaning = "The indoor unit's board runs it with the fan or with heat.")
	EQUIPMENT_BOARD
}
