package org.setwright.trade.controller;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** What the new controller can do. */
@About(label = "controller", meaning = "The wall controller to be set up, and what it can do.", always = true)
public record Controller(
		@Asked(label = "model", meaning = "Which controller it is, as on its box.", changesOnSite = true)
		Answer<String> model,
		@Asked(label = "heat stages", meaning = "How many steps of heating it can call for, auxiliary heat included.", least = 0, most = 5, changesOnSite = true)
		Answer<Integer> heatStages,
		@Asked(label = "cool stages", meaning = "How many steps of cooling it can call for.", least = 0, most = 3, changesOnSite = true)
		Answer<Integer> coolStages,
		@Asked(label = "runs heat pumps", says = "runs heat pumps|does not run heat pumps", meaning = "Whether it has an output for the changeover valve.", changesOnSite = true)
		Answer<Boolean> runsHeatPumps,
		@Asked(label = "power", says = "is powered by the {}", meaning = "What it needs to stay alive.", changesOnSite = true)
		Answer<Power> power,
		@Asked(label = "power draw", meaning = "What it draws from the 24 V circuit.", unit = Unit.VOLT_AMPERE, least = 0, most = 20)
		Answer<Quantity> powerDraw,
		@Asked(label = "rated for", says = "is rated for {}", meaning = "What voltage its maker lets it switch.", changesOnSite = true)
		Answer<RatedFor> ratedFor,
		@Asked(label = "separate supplies", says = "takes two separate supplies|takes no separate supplies", meaning = "Whether it has Rh and Rc terminals with a link that comes out.", changesOnSite = true)
		Answer<Boolean> separateSupplies,
		@Asked(label = "outdoor lockouts", says = "has outdoor lockouts|has no outdoor lockouts", meaning = "Whether it can hold off compressor and auxiliary heat by outdoor temperature.", changesOnSite = true)
		Answer<Boolean> outdoorLockouts,
		@Asked(label = "outdoor sensor input", says = "has an input for an outdoor sensor|has no input for an outdoor sensor", meaning = "Whether an outdoor sensor can be connected.", changesOnSite = true)
		Answer<Boolean> outdoorSensorInput,
		@Asked(label = "indoor sensor input", says = "has an input for an indoor sensor|has no input for an indoor sensor", meaning = "Whether a remote indoor or floor sensor can be connected.", changesOnSite = true)
		Answer<Boolean> indoorSensorInput,
		@Asked(label = "measures humidity", says = "measures humidity|does not measure humidity", meaning = "Whether it has a humidity sensor of its own.", changesOnSite = true)
		Answer<Boolean> measuresHumidity,
		@Asked(label = "humidity output", says = "has a humidity output|has no humidity output", meaning = "Whether it can switch a humidifier or dehumidifier.", changesOnSite = true)
		Answer<Boolean> humidityOutput,
		@Asked(label = "ventilation output", says = "has a ventilation output|has no ventilation output", meaning = "Whether it can switch a ventilator.", changesOnSite = true)
		Answer<Boolean> ventilationOutput,
		@Asked(label = "clock holds for", says = "has a clock that holds for {}", meaning = "How long its clock keeps time without power.", unit = Unit.HOUR, least = 0, most = 10000)
		Answer<Quantity> clockHoldsFor)
		implements Fact {

	/** What a controller needs to stay alive. */
	public enum Power implements Choice {
		@Called(label = "common conductor", meaning = "24 V between R and C, all the time.")
		COMMON_CONDUCTOR,
		@Called(label = "batteries", meaning = "Batteries only.")
		BATTERIES,
		@Called(label = "common or batteries", meaning = "Either will do.")
		COMMON_OR_BATTERIES
	}

	/** What a controller may switch. */
	public enum RatedFor implements Choice {
		@Called(label = "24 V", meaning = "24 V circuits only.")
		TWENTY_FOUR_VOLT,
		@Called(label = "24 V and millivolt", meaning = "24 V circuits and thermopile circuits, by a dry contact.")
		TWENTY_FOUR_VOLT_AND_MILLIVOLT,
		@Called(label = "line voltage", meaning = "120 V to 240 V loads up to the amperes on its label.")
		LINE_VOLTAGE
	}
}
