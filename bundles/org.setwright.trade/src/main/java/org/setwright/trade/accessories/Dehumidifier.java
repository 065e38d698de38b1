package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Takes moisture out of the air in summer. */
@About(label = "dehumidifier", meaning = "Takes moisture out of the house air: a machine, or a slow speed of the indoor fan.", changesOnSite = true)
public record Dehumidifier(
		@Asked(label = "kind", meaning = "How it dries the air.")
		Answer<Kind> kind,
		@Asked(label = "controlled by", says = "is controlled by the {}", meaning = "Who decides when it runs.", changesOnSite = true)
		Answer<ControlledBy> controlledBy,
		@Asked(label = "powered by", says = "is powered by {}", meaning = "Where it takes its power from.")
		Answer<PoweredBy> poweredBy,
		@Asked(label = "terminal acts", says = "has a terminal that acts {}", meaning = "Whether its terminal calls for drying by being powered or by losing power, as its maker states.")
		Answer<TerminalActs> terminalActs,
		@Asked(label = "load", meaning = "What its relay draws.", unit = Unit.VOLT_AMPERE, least = 0, most = 100)
		Answer<Quantity> load)
		implements Fact {

	/** How the air is dried. */
	public enum Kind implements Choice {
		@Called(label = "whole-house dehumidifier", meaning = "A machine with a compressor of its own in the ducts.")
		WHOLE_HOUSE,
		@Called(label = "slow fan", meaning = "A terminal of the indoor unit that slows its fan while cooling.")
		SLOW_FAN
	}

	/** How a terminal calls for drying. */
	public enum TerminalActs implements Choice {
		@Called(label = "when powered", meaning = "24 V at the terminal calls for drying.")
		WHEN_POWERED,
		@Called(label = "when unpowered", meaning = "The terminal is powered all the time and losing 24 V calls for drying.")
		WHEN_UNPOWERED
	}
}
