package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;

/** Measures room temperature away from the controller. */
@About(label = "indoor sensor", meaning = "Measures room temperature away from the controller.", changesOnSite = true)
public record IndoorSensor(
		@Asked(label = "connection", says = "is {}", meaning = "How it reaches the controller.")
		Answer<Connection> connection,
		@Asked(label = "used", says = "is used \"{}\"", meaning = "What its reading is for.", changesOnSite = true)
		Answer<Used> used)
		implements Fact {

	/** What a remote reading is for. */
	public enum Used implements Choice {
		@Called(label = "instead of controller", meaning = "The controller hangs in a bad place, and this reading replaces its own.")
		INSTEAD_OF_CONTROLLER,
		@Called(label = "averaged", meaning = "Both readings count the same.")
		AVERAGED
	}
}
