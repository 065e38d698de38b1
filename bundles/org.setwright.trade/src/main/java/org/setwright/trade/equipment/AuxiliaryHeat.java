package org.setwright.trade.equipment;

import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Heat that helps or replaces a heat pump's. "None" says that there is none; silence says that nobody looked. */
@About(label = "auxiliary heat", uncountable = true, meaning = "Heat that helps a heat pump or takes its place: electric elements, a furnace, a hot-water coil.")
public record AuxiliaryHeat(
		@Asked(label = "kind", says = "comes from {a}", meaning = "What makes the auxiliary heat.")
		Answer<Kind> kind,
		@Asked(label = "stages", meaning = "How many steps of auxiliary heat have a terminal of their own.", least = 1, most = 2)
		Answer<Integer> stages,
		@Asked(label = "heat output", meaning = "Rated output of all its steps together, for electric elements their rated power.", unit = Unit.KILOWATT, least = 0, most = 100)
		Answer<Quantity> heatOutput,
		@Asked(label = "emergency relay", says = "has an emergency relay|has no emergency relay", meaning = "Whether the equipment has a terminal of its own for emergency heat (E).")
		Answer<Boolean> emergencyRelay,
		@Asked(label = "starts fan", says = "starts the fan|does not start the fan", meaning = "Whether its own relay starts the indoor fan with it.")
		Answer<Boolean> startsFan)
		implements Fact {

	/** What makes the auxiliary heat. */
	public enum Kind implements Choice {
		@Called(label = "electric elements", meaning = "Resistance elements in the air stream.")
		ELECTRIC_ELEMENTS,
		@Called(label = "furnace", meaning = "A fuel-fired furnace under or beside the heat pump's indoor coil.")
		FURNACE,
		@Called(label = "hot-water coil", meaning = "A coil in the air stream fed with hot water.")
		HOT_WATER_COIL
	}
}
