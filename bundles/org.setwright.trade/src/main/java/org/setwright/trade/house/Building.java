package org.setwright.trade.house;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** The house as far as it decides settings. */
@About(label = "building", meaning = "The house as far as it decides settings.", always = true)
public record Building(
		@Asked(label = "floor area", meaning = "Heated and cooled floor area.", unit = Unit.SQUARE_FOOT, least = 100, most = 20000)
		Answer<Quantity> floorArea,
		@Asked(label = "bedrooms", meaning = "How many bedrooms; the ventilation standards count people by them.", least = 0, most = 12)
		Answer<Integer> bedrooms,
		@Asked(label = "design heat loss", meaning = "Heat the house loses at the heating design temperature, from a load calculation.", unit = Unit.BTU_PER_HOUR, least = 2000, most = 500000)
		Answer<Quantity> designHeatLoss,
		@Asked(label = "window glazing", meaning = "How many panes most windows have.")
		Answer<Glazing> windowGlazing,
		@Asked(label = "ventilation rule", meaning = "Which rule for fresh air is in force here.")
		Answer<VentilationRule> ventilationRule,
		@Asked(label = "pipes in cold spaces", says = "has pipes in cold spaces|has no pipes in cold spaces", meaning = "Whether water pipes run where they can freeze when the heat is low.")
		Answer<Boolean> pipesInColdSpaces,
		@Asked(label = "carbon monoxide alarm", says = "has a carbon monoxide alarm|has no carbon monoxide alarm", meaning = "Whether working carbon monoxide alarms are fitted outside the bedrooms.", changesOnSite = true)
		Answer<Boolean> carbonMonoxideAlarm)
		implements Fact {

	/** How many panes. */
	public enum Glazing implements Choice {
		@Called(label = "single", meaning = "One pane.")
		SINGLE,
		@Called(label = "double", meaning = "Two panes.")
		DOUBLE,
		@Called(label = "triple", meaning = "Three panes.")
		TRIPLE
	}

	/** Which rule for fresh air is in force. */
	public enum VentilationRule implements Choice {
		@Called(label = "ASHRAE 62.2", meaning = "ASHRAE 62.2 of 2013 or later: 0.03 cfm for each square foot and 7.5 cfm for each person.")
		ASHRAE_62_2,
		@Called(label = "IRC or IMC", meaning = "The model codes: 0.01 cfm for each square foot and 7.5 cfm for each person.")
		IRC_OR_IMC
	}
}
