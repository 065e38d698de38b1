package org.setwright.trade.accessories;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Measures the temperature of a heated floor. */
@About(label = "floor sensor", meaning = "Measures the temperature of a heated floor.")
public record FloorSensor(
		@Asked(label = "connection", says = "is {}", meaning = "How it reaches the controller.")
		Answer<Connection> connection,
		@Asked(label = "floor covering", meaning = "What lies on the heated floor.")
		Answer<Covering> floorCovering,
		@Asked(label = "stated limit", meaning = "The highest floor temperature the covering's maker allows.", unit = Unit.FAHRENHEIT, least = 70, most = 105)
		Answer<Quantity> statedLimit)
		implements Fact {

	/** What lies on the floor. */
	public enum Covering implements Choice {
		@Called(label = "tile or stone", meaning = "Ceramic tile, stone or polished concrete.")
		TILE_OR_STONE,
		@Called(label = "wood", meaning = "Solid or engineered wood.")
		WOOD,
		@Called(label = "laminate or vinyl", meaning = "Laminate, vinyl plank or sheet.")
		LAMINATE_OR_VINYL,
		@Called(label = "carpet", meaning = "Carpet with or without a pad.")
		CARPET
	}
}
