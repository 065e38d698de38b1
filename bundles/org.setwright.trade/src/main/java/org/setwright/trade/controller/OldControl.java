package org.setwright.trade.controller;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;

/** The control that is replaced, and what it was set to: evidence, right or wrong. */
@About(label = "old control", meaning = "The control that is replaced, and what it was set to.")
public record OldControl(
		@Asked(label = "kind", meaning = "What sort of control it was.")
		Answer<Kind> kind,
		@Asked(label = "worked properly", says = "worked properly|did not work properly", meaning = "Whether heating and cooling did what was called for, seen on this job or told by the occupants.")
		Answer<Boolean> workedProperly,
		@Asked(label = "valve energised in", says = "had its valve energised in {}", meaning = "How its changeover valve entry or terminal was set.")
		Answer<OutdoorUnit.ValveSense> valveEnergisedIn,
		@Asked(label = "fan in heat by", says = "left the fan in heat to the {}", meaning = "Who it was set to let start the fan in heat.")
		Answer<IndoorUnit.FanRunBy> fanInHeatBy,
		@Asked(label = "heat stages", says = "had {} heat stages", meaning = "How many steps of heat it was set to call for.", least = 0, most = 5)
		Answer<Integer> heatStages,
		@Asked(label = "link fitted", says = "had its link fitted|had no link fitted", meaning = "Whether it had a link between its heating and cooling supply terminals.")
		Answer<Boolean> linkFitted,
		@Asked(label = "heating cycles", says = "had heating cycles of {}", meaning = "The heating cycle rate it was set to.", unit = Unit.PER_HOUR, least = 1, most = 12)
		Answer<Quantity> heatingCycles)
		implements Fact {

	/** What sort of control. */
	public enum Kind implements Choice {
		@Called(label = "mercury bulb", meaning = "A tilting glass bulb with mercury, which is hazardous waste.")
		MERCURY_BULB,
		@Called(label = "snap contact", meaning = "A bimetal with a mechanical contact.")
		SNAP_CONTACT,
		@Called(label = "electronic", meaning = "An electronic control with or without a programme.")
		ELECTRONIC
	}
}
