package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.AMPERE;

import org.setwright.trade.calculation.airflow.ElectricHeat;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;

/** What electric elements draw: far less than that means a step that never came on. */
@About(label = "electric heat current", meaning = "What all electric elements together draw from the supply; less means that a step never came on.")
public record ElectricHeatCurrent(
		@Calculated(from = { "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.heatOutput", "AuxiliaryHeat.kind",
				"AuxiliaryHeat.heatOutput" },
				formula = "rated power of the elements over 240 V",
				source = "Ohm's law for resistance heat on a single-phase supply")
		@Asked(label = "at 240 V", says = "comes to {} at 240 V", meaning = "Current of all elements rated for 240 V and fed with 240 V.", unit = AMPERE, least = 0, most = 2000)
		Answer<Quantity> at240Volts,
		@Calculated(from = { "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.heatOutput", "AuxiliaryHeat.kind",
				"AuxiliaryHeat.heatOutput" },
				formula = "rated power of the elements over 240 V, times 208 over 240",
				source = "Ohm's law: the same element at a lower voltage draws less in proportion")
		@Asked(label = "at 208 V", says = "comes to {} at 208 V", meaning = "Current of the same elements, rated for 240 V, fed with 208 V.", unit = AMPERE, least = 0, most = 2000)
		Answer<Quantity> at208Volts)
		implements Fact {

	private static final double RATED_VOLTS = 240;
	private static final double LOWER_VOLTS = 208;

	/** @return the current of {@code job}; none without electric elements in an air stream */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		return Stated.entry(ElectricHeatRise.applies(stated), () -> computed(stated));
	}

	private static ElectricHeatCurrent computed(Stated stated) {
		Answer<Double> rated = ElectricHeatRise.kilowatts(stated).map(kw -> ElectricHeat.amperes(kw, RATED_VOLTS));
		return new ElectricHeatCurrent(Stated.quantity(rated, AMPERE),
				Stated.quantity(rated.map(a -> a * LOWER_VOLTS / RATED_VOLTS), AMPERE));
	}
}
