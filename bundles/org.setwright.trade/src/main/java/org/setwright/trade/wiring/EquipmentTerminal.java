package org.setwright.trade.wiring;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;

/** A low-voltage terminal the equipment offers. */
@About(label = "equipment terminal", plural = "equipment terminals", meaning = "A low-voltage terminal the equipment offers.", always = true)
public record EquipmentTerminal(
		@Asked(label = "mark", says = "is marked {}", meaning = "The letters beside it.", naming = true)
		Answer<TerminalMark> mark,
		@Asked(label = "belongs to", says = "belongs to the {}", meaning = "Which machine it is on.")
		Answer<Machine> belongsTo)
		implements Fact {

	/** Which machine a terminal is on. */
	public enum Machine implements Choice {
		@Called(label = "indoor unit", meaning = "The furnace, air handler or boiler.")
		INDOOR_UNIT,
		@Called(label = "outdoor unit", meaning = "The machine with the compressor.")
		OUTDOOR_UNIT,
		@Called(label = "zone panel", meaning = "The panel that opens the zones' dampers or valves.")
		ZONE_PANEL,
		@Called(label = "accessory", meaning = "A humidifier, dehumidifier, ventilator or air cleaner.")
		ACCESSORY
	}
}
