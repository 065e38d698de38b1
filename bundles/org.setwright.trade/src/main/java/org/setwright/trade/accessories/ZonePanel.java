package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Opens dampers or valves for several zones and calls the equipment for all of them. */
@About(label = "zone panel", meaning = "Opens dampers or valves for several zones and calls the equipment for all of them.")
public record ZonePanel(
		@Asked(label = "zones", meaning = "How many zones it serves.", least = 2, most = 12)
		Answer<Integer> zones,
		@Asked(label = "expects", says = "expects {}", meaning = "How the panel's maker wants the zone controls set.")
		Answer<Expects> expects,
		@Asked(label = "serves", says = "serves {}", meaning = "What it opens for a zone.")
		Answer<Serves> serves,
		@Asked(label = "load", meaning = "What the panel and its dampers or valves draw together.", unit = Unit.VOLT_AMPERE, least = 0, most = 250)
		Answer<Quantity> load)
		implements Fact {

	/** How zone controls have to be set. */
	public enum Expects implements Choice {
		@Called(label = "separate heating and cooling", meaning = "Each zone control calls W for heat and Y for cooling, whatever the equipment.")
		SEPARATE_HEATING_AND_COOLING,
		@Called(label = "heat pump", meaning = "Each zone control calls as if it ran the heat pump.")
		HEAT_PUMP
	}

	/** What is opened for a zone. */
	public enum Serves implements Choice {
		@Called(label = "air dampers", meaning = "Dampers in the ducts.")
		AIR_DAMPERS,
		@Called(label = "water valves", meaning = "Valves or pumps in the pipes; their end switches may carry power of their own.")
		WATER_VALVES
	}
}
