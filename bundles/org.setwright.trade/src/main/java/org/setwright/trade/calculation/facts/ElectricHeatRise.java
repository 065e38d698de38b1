package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.CUBIC_FOOT_PER_MINUTE;
import static org.setwright.trade.catalogue.Unit.FAHRENHEIT_DEGREES;
import static org.setwright.trade.catalogue.Unit.FOOT;
import static org.setwright.trade.catalogue.Unit.KILOWATT;

import java.util.List;
import org.setwright.trade.calculation.airflow.ElectricHeat;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.house.Climate;

/** How warm electric elements make the air: too warm means too little airflow. */
@About(label = "electric heat rise", meaning = "How much all electric elements together warm the air; more than their maker allows means too little airflow.")
public record ElectricHeatRise(
		@Calculated(from = { "IndoorUnit.kind", "IndoorUnit.fuel", "IndoorUnit.heatOutput", "IndoorUnit.airflow",
				"AuxiliaryHeat.kind", "AuxiliaryHeat.heatOutput", "Climate.elevation" },
				formula = "heat of the elements over 1.08 times the airflow, 1.08 being smaller in thin air",
				source = "standard air, 0.075 lb/ft3 and 0.24 Btu/lb °F; pressure by ASHRAE Fundamentals 2017 chapter 1 equation 3")
		@Asked(label = "rise", says = "comes to {}", meaning = "How much warmer the air leaves the elements than it enters, the compressor's heat not counted.", unit = FAHRENHEIT_DEGREES, least = 0, most = 10000)
		Answer<Quantity> rise)
		implements Fact {

	/** @return the rise of {@code job}; none without electric elements in an air stream */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		return Stated.entry(applies(stated), () -> computed(stated));
	}

	static Answer<Boolean> applies(Stated stated) {
		Answer<Boolean> electric = Stated.or(List.of(auxiliaryElements(stated),
				stated.any(IndoorUnit.class, IndoorUnit::fuel, fuel -> fuel == IndoorUnit.Fuel.ELECTRIC)));
		return Stated.and(CoolingAirflow.movesAir(stated), electric);
	}

	static Answer<Double> kilowatts(Stated stated) {
		return Stated.choose(auxiliaryElements(stated),
				() -> stated.number(AuxiliaryHeat.class, AuxiliaryHeat::heatOutput, KILOWATT),
				() -> stated.number(IndoorUnit.class, IndoorUnit::heatOutput, KILOWATT));
	}

	private static Answer<Boolean> auxiliaryElements(Stated stated) {
		return stated.any(AuxiliaryHeat.class, AuxiliaryHeat::kind, kind -> kind == AuxiliaryHeat.Kind.ELECTRIC_ELEMENTS);
	}

	private static ElectricHeatRise computed(Stated stated) {
		Answer<Double> airflow = stated.number(IndoorUnit.class, IndoorUnit::airflow, CUBIC_FOOT_PER_MINUTE);
		Answer<Double> elevation = stated.number(Climate.class, Climate::elevation, FOOT);
		return new ElectricHeatRise(Stated.quantity(kilowatts(stated).then(kw -> Answer.both(airflow, elevation,
				(cfm, feet) -> ElectricHeat.riseFahrenheit(kw, cfm, feet))), FAHRENHEIT_DEGREES));
	}
}
