package org.setwright.trade.equipment;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** The compressor section: outdoors, or indoors with a ground loop. */
@About(label = "outdoor unit", meaning = "The machine with the compressor: an air conditioner or a heat pump.")
public record OutdoorUnit(
		@Asked(label = "kind", says = "is {a}", meaning = "What the machine does: cool only, or pump heat both ways.")
		Answer<Kind> kind,
		@Asked(label = "maker", meaning = "Who made it, as on the nameplate.")
		Answer<String> maker,
		@Asked(label = "model", meaning = "The model number on the nameplate.")
		Answer<String> model,
		@Asked(label = "stages", meaning = "How many steps of compressor capacity the controller has to call for.", least = 1, most = 2)
		Answer<Integer> stages,
		@Asked(label = "variable speed", says = "runs at variable speed|does not run at variable speed", meaning = "Whether the compressor chooses its own speed, whatever the controller calls for.")
		Answer<Boolean> variableSpeed,
		@Asked(label = "valve energised in", says = "has its valve energised in {}", meaning = "In which mode the maker's diagram shows the changeover valve powered.")
		Answer<ValveSense> valveEnergisedIn,
		@Asked(label = "valve found energised in", says = "was found to have its valve energised in {}", meaning = "In which mode a test on this job showed the changeover valve powered.")
		Answer<ValveSense> valveFoundEnergisedIn,
		@Asked(label = "cooling capacity at 95 °F", meaning = "Rated cooling output at 95 °F (35 °C) outdoors.", unit = Unit.BTU_PER_HOUR, least = 5000, most = 130000)
		Answer<Quantity> coolingCapacityAt95F,
		@Asked(label = "heating capacity at 47 °F", meaning = "Rated heat output at 47 °F (8.3 °C) outdoors.", unit = Unit.BTU_PER_HOUR, least = 5000, most = 130000)
		Answer<Quantity> heatingCapacityAt47F,
		@Asked(label = "heating capacity at 17 °F", meaning = "Rated heat output at 17 °F (-8.3 °C) outdoors.", unit = Unit.BTU_PER_HOUR, least = 2000, most = 130000)
		Answer<Quantity> heatingCapacityAt17F,
		@Asked(label = "COP at 47 °F", meaning = "Heat delivered for each unit of electric energy at 47 °F (8.3 °C) outdoors.", least = 1, most = 8)
		Answer<Quantity> copAt47F,
		@Asked(label = "COP at 17 °F", meaning = "Heat delivered for each unit of electric energy at 17 °F (-8.3 °C) outdoors.", least = 0.5, most = 6)
		Answer<Quantity> copAt17F,
		@Asked(label = "lowest outdoor temperature", meaning = "The coldest outdoor air in which the maker lets it heat.", unit = Unit.FAHRENHEIT, least = -40, most = 50)
		Answer<Quantity> lowestOutdoorTemperature,
		@Asked(label = "minimum off time", meaning = "How long the maker wants the compressor to rest before it starts again.", unit = Unit.MINUTE, least = 0, most = 15)
		Answer<Quantity> minimumOffTime,
		@Asked(label = "crankcase heater", says = "has a crankcase heater|has no crankcase heater", meaning = "Whether a heater keeps the compressor's oil warm while it rests.")
		Answer<Boolean> crankcaseHeater,
		@Asked(label = "contactor inrush", meaning = "What its contactor's coil draws in the moment it pulls in, as on its label.", unit = Unit.VOLT_AMPERE, least = 1, most = 200)
		Answer<Quantity> contactorInrush,
		@Asked(label = "contactor pull-in voltage", meaning = "The lowest voltage at which its maker promises that the contactor pulls in.", unit = Unit.VOLT, least = 12, most = 24)
		Answer<Quantity> contactorPullIn,
		@Asked(label = "control cable length", meaning = "Length one way of the control cable between indoor and outdoor unit.", unit = Unit.FOOT, least = 1, most = 500)
		Answer<Quantity> controlCableLength,
		@Asked(label = "control cable gauge", meaning = "Thickness of the conductors between indoor and outdoor unit.", unit = Unit.AWG, least = 10, most = 26)
		Answer<Quantity> controlCableGauge,
		@Asked(label = "contactor holding load", meaning = "What its contactor's coil draws while it holds, as on its label.", unit = Unit.VOLT_AMPERE, least = 0, most = 50)
		Answer<Quantity> contactorHolding,
		@Asked(label = "changeover valve load", meaning = "What its changeover valve draws while powered, as on its label.", unit = Unit.VOLT_AMPERE, least = 0, most = 50)
		Answer<Quantity> changeoverValveLoad)
		implements Fact {

	/** What the machine does. */
	public enum Kind implements Choice {
		@Called(label = "air conditioner", meaning = "Cools only.")
		AIR_CONDITIONER,
		@Called(label = "air-source heat pump", meaning = "Heats and cools, taking heat from outdoor air.")
		AIR_SOURCE_HEAT_PUMP,
		@Called(label = "ground-source heat pump", meaning = "Heats and cools, taking heat from a ground loop.")
		GROUND_SOURCE_HEAT_PUMP
	}

	/** In which mode the changeover valve is powered. */
	public enum ValveSense implements Choice {
		@Called(label = "cooling", meaning = "The valve is powered while cooling (terminal O).")
		COOLING,
		@Called(label = "heating", meaning = "The valve is powered while heating (terminal B).")
		HEATING
	}
}
