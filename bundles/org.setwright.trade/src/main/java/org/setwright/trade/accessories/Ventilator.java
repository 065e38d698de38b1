package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Brings fresh air into the house. */
@About(label = "ventilator", meaning = "Brings fresh air into the house or takes stale air out.", changesOnSite = true)
public record Ventilator(
		@Asked(label = "kind", meaning = "How it changes the air.")
		Answer<Kind> kind,
		@Asked(label = "airflow", meaning = "Outdoor air it moves while it runs, measured or from its fan table.", unit = Unit.CUBIC_FOOT_PER_MINUTE, least = 10, most = 1000)
		Answer<Quantity> airflow,
		@Asked(label = "needs indoor fan", says = "needs the indoor fan|does not need the indoor fan", meaning = "Whether its air reaches the rooms only while the indoor fan runs.")
		Answer<Boolean> needsIndoorFan,
		@Asked(label = "controlled by", says = "is controlled by the {}", meaning = "Who decides when it runs.", changesOnSite = true)
		Answer<ControlledBy> controlledBy,
		@Asked(label = "powered by", says = "is powered by {}", meaning = "Where it takes its power from.")
		Answer<PoweredBy> poweredBy,
		@Asked(label = "load", meaning = "What its damper or relay draws.", unit = Unit.VOLT_AMPERE, least = 0, most = 100)
		Answer<Quantity> load)
		implements Fact {

	/** How the air is changed. */
	public enum Kind implements Choice {
		@Called(label = "heat-recovery ventilator", meaning = "Changes air both ways and keeps most of the heat.")
		HEAT_RECOVERY,
		@Called(label = "energy-recovery ventilator", meaning = "Changes air both ways and keeps most of the heat and some moisture.")
		ENERGY_RECOVERY,
		@Called(label = "fresh-air damper", meaning = "A damper in a duct from outdoors to the return; the indoor fan draws the air.")
		FRESH_AIR_DAMPER,
		@Called(label = "exhaust fan", meaning = "A fan that blows stale air out; outdoor air finds its own way in.")
		EXHAUST_FAN
	}
}
