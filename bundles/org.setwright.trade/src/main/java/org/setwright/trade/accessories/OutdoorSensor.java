package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Fact;

/** Tells the controller the outdoor temperature. */
@About(label = "outdoor sensor", meaning = "Tells the controller the outdoor temperature.", changesOnSite = true)
public record OutdoorSensor(
		@Asked(label = "connection", says = "is {}", meaning = "How it reaches the controller.")
		Answer<Connection> connection,
		@Asked(label = "shaded", says = "is shaded|is not shaded", meaning = "Whether it is out of the sun and away from vents and the outdoor unit's air.", changesOnSite = true)
		Answer<Boolean> shaded)
		implements Fact {
}
