package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Adds moisture to the air in winter. */
@About(label = "humidifier", meaning = "Adds moisture to the house air in winter.", changesOnSite = true)
public record Humidifier(
		@Asked(label = "kind", meaning = "How it puts moisture into the air.")
		Answer<Kind> kind,
		@Asked(label = "controlled by", says = "is controlled by the {}", meaning = "Who decides when it runs.", changesOnSite = true)
		Answer<ControlledBy> controlledBy,
		@Asked(label = "powered by", says = "is powered by {}", meaning = "Where it takes its power from.")
		Answer<PoweredBy> poweredBy,
		@Asked(label = "load", meaning = "What its water valve or relay draws.", unit = Unit.VOLT_AMPERE, least = 0, most = 100)
		Answer<Quantity> load)
		implements Fact {

	/** How a humidifier puts moisture into the air. */
	public enum Kind implements Choice {
		@Called(label = "bypass", meaning = "Warm air is led through a wet pad, so it works only while heat is on.")
		BYPASS,
		@Called(label = "fan-powered", meaning = "A fan of its own blows warm air through a wet pad.")
		FAN_POWERED,
		@Called(label = "steam", meaning = "It boils water, so it needs moving air and no heat.")
		STEAM
	}
}
