package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;

/** Where an accessory takes its power from. */
public enum PoweredBy implements Choice {
	@Called(label = "equipment transformer", meaning = "24 V from the transformer that feeds the equipment's controls.")
	EQUIPMENT_TRANSFORMER,
	@Called(label = "own transformer", meaning = "24 V from a transformer of its own, so that it needs a dry contact.")
	OWN_TRANSFORMER,
	@Called(label = "line voltage", meaning = "Line voltage, switched by a relay of its own.")
	LINE_VOLTAGE
}
