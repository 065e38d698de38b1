package org.setwright.trade.equipment;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** The indoor section: what moves the air or the water, and the heat it makes by itself. */
@About(label = "indoor unit", meaning = "The machine indoors that moves air or water, with any heat it makes by itself.")
public record IndoorUnit(
		@Asked(label = "kind", says = "is {a}", meaning = "What the machine is.")
		Answer<Kind> kind,
		@Asked(label = "fuel", meaning = "What it turns into heat by itself; none when only the compressor heats.")
		Answer<Fuel> fuel,
		@Asked(label = "maker", meaning = "Who made it, as on the nameplate.")
		Answer<String> maker,
		@Asked(label = "stages", meaning = "How many steps of its own heat the controller can call for.", least = 0, most = 3)
		Answer<Integer> stages,
		@Asked(label = "heat output", meaning = "Rated heat output of its own; for electric elements their rated power.", unit = Unit.BTU_PER_HOUR, least = 0, most = 500000)
		Answer<Quantity> heatOutput,
		@Asked(label = "efficiency", meaning = "Annual fuel utilisation efficiency (AFUE) on the nameplate.", unit = Unit.PERCENT, least = 50, most = 100)
		Answer<Quantity> efficiency,
		@Asked(label = "condensing", says = "is condensing|is not condensing", meaning = "Whether it condenses its flue gas and drains water.")
		Answer<Boolean> condensing,
		@Asked(label = "distribution", meaning = "How the heat reaches the rooms.")
		Answer<Distribution> distribution,
		@Asked(label = "fan run by", says = "has its fan run by the {}", meaning = "Who starts the indoor fan on a call for the indoor unit's own heat, as its diagram shows.")
		Answer<FanRunBy> fanRunBy,
		@Asked(label = "variable-speed fan", says = "has a variable-speed fan|has no variable-speed fan", meaning = "Whether its fan motor can slow down for drying or circulation.")
		Answer<Boolean> variableSpeedFan,
		@Asked(label = "own fan delay", says = "has a fan delay of its own|has no fan delay of its own", meaning = "Whether its own board keeps the fan running for a while after a call ends.")
		Answer<Boolean> ownFanDelay,
		@Asked(label = "airflow", meaning = "Air moved on a cooling call, measured or from the fan table.", unit = Unit.CUBIC_FOOT_PER_MINUTE, least = 100, most = 5000)
		Answer<Quantity> airflow,
		@Asked(label = "least temperature rise", meaning = "The lower end of the temperature rise its nameplate allows in heating.", unit = Unit.FAHRENHEIT_DEGREES, least = 5, most = 150)
		Answer<Quantity> leastTemperatureRise,
		@Asked(label = "most temperature rise", meaning = "The upper end of the temperature rise its nameplate allows in heating.", unit = Unit.FAHRENHEIT_DEGREES, least = 5, most = 150)
		Answer<Quantity> mostTemperatureRise,
		@Asked(label = "gas valve load", meaning = "What its gas valve draws while open, as on its label.", unit = Unit.VOLT_AMPERE, least = 0, most = 50)
		Answer<Quantity> gasValveLoad)
		implements Fact {

	/** What the machine is. */
	public enum Kind implements Choice {
		@Called(label = "furnace", meaning = "Warms air by a burner or by electric elements and blows it through ducts.")
		FURNACE,
		@Called(label = "air handler", meaning = "Blows air over a coil through ducts, with or without electric elements.")
		AIR_HANDLER,
		@Called(label = "boiler", meaning = "Warms water or makes steam for radiators, baseboards or floors.")
		BOILER,
		@Called(label = "hydronic air handler", meaning = "Blows air over a hot-water coil fed by a boiler or water heater.")
		HYDRONIC_AIR_HANDLER,
		@Called(label = "room heater", meaning = "Heats the room it stands in: electric baseboard, gas wall heater, stove.")
		ROOM_HEATER
	}

	/** What is turned into heat. */
	public enum Fuel implements Choice {
		@Called(label = "natural gas", meaning = "Piped gas.")
		NATURAL_GAS,
		@Called(label = "propane", meaning = "Liquefied petroleum gas from a tank.")
		PROPANE,
		@Called(label = "oil", meaning = "Heating oil from a tank.")
		OIL,
		@Called(label = "electric", meaning = "Electric elements.")
		ELECTRIC,
		@Called(label = "none", meaning = "It makes no heat by itself.")
		NO_FUEL
	}

	/** How heat reaches the rooms. */
	public enum Distribution implements Choice {
		@Called(label = "ducts", meaning = "Warm air through ducts.")
		DUCTS,
		@Called(label = "radiators", meaning = "Hot water through radiators.")
		RADIATORS,
		@Called(label = "baseboards", meaning = "Hot water through finned baseboards.")
		BASEBOARDS,
		@Called(label = "in-floor", meaning = "Warm water or cable in the floor.")
		IN_FLOOR,
		@Called(label = "steam radiators", meaning = "Steam through radiators.")
		STEAM_RADIATORS
	}

	/** Who starts the indoor fan on a call for heat. */
	public enum FanRunBy implements Choice {
		@Called(label = "equipment", meaning = "The equipment starts its fan by itself, by time or by temperature.")
		EQUIPMENT,
		@Called(label = "controller", meaning = "The controller powers the fan terminal together with heat.")
		CONTROLLER,
		@Called(label = "no fan", meaning = "No fan moves this heat.")
		NO_FAN
	}
}
