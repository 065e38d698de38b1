package org.setwright.trade.wiring;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;

/** The electric supply found where the controller goes. */
@About(label = "site power", meaning = "The electric supply found where the controller goes.", always = true)
public record SitePower(
		@Asked(label = "voltage", says = "is {}", meaning = "What the conductors at the wall carry, measured or read at their other end.")
		Answer<Voltage> voltage,
		@Asked(label = "common at the wall", says = "has a common at the wall|has no common at the wall", meaning = "Whether a conductor from the transformer's common side reaches the wall.", changesOnSite = true)
		Answer<Boolean> commonAtTheWall,
		@Asked(label = "commons joined", says = "has its commons joined|has its commons apart", meaning = "Whether the common sides of two transformers are joined anywhere.", changesOnSite = true)
		Answer<Boolean> commonsJoined,
		@Asked(label = "frequent power cuts", says = "is cut often|is not cut often", meaning = "Whether the supply often fails for hours, so that a clock may lose the time.")
		Answer<Boolean> frequentPowerCuts)
		implements Fact {

	/** What the conductors at the wall carry. */
	public enum Voltage implements Choice {
		@Called(label = "24 V", meaning = "Low voltage from a control transformer.")
		TWENTY_FOUR_VOLT,
		@Called(label = "line voltage", meaning = "120 V, 208 V or 240 V straight from the panel; deadly.")
		LINE_VOLTAGE,
		@Called(label = "millivolt", meaning = "The small voltage of a pilot's thermopile; no outside power may be put on it.")
		MILLIVOLT,
		@Called(label = "maker's data line", meaning = "A digital line that only the equipment maker's own controllers understand.")
		MAKERS_DATA_LINE
	}
}
