package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.KILOWATT;

import org.setwright.trade.calculation.heatpump.Shortfall;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.house.Building;

/** Whether the auxiliary heat fitted beside an air-source heat pump is enough. */
@About(label = "auxiliary need", meaning = "What the auxiliary heat fitted has to give at the heating design temperature, and whether it can.")
public record AuxiliaryNeed(
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature", "AuxiliaryHeat.kind" },
				through = { "HeatPumpBalance.shortfallAtDesign" },
				formula = "the heat pump's shortfall at the design temperature; all of the heat loss for a furnace, which heats alone",
				source = "heat balance")
		@Asked(label = "needed output", says = "comes to {}", meaning = "What auxiliary heat has to give at the heating design temperature.", unit = KILOWATT, least = 0, most = 200)
		Answer<Quantity> neededOutput,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature", "AuxiliaryHeat.kind", "AuxiliaryHeat.heatOutput" },
				through = { "AuxiliaryNeed.neededOutput" },
				formula = "whether the output fitted is at least the output needed",
				source = "heat balance")
		@Asked(label = "enough", says = "is met by what is fitted|is not met by what is fitted", meaning = "Whether the auxiliary heat fitted keeps the house warm at the heating design temperature.")
		Answer<Boolean> enough,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F",
				"Building.designHeatLoss", "Climate.heatingDesignTemperature", "AuxiliaryHeat.kind", "AuxiliaryHeat.heatOutput",
				"AuxiliaryHeat.stages" },
				through = { "AuxiliaryNeed.neededOutput" },
				formula = "output needed over the output of one step, rounded up, at most the steps fitted",
				source = "heat balance; steps taken as equal, common practice")
		@Asked(label = "needed steps", says = "takes {} steps", meaning = "How many of the steps fitted are needed at the heating design temperature.", least = 0, most = 2)
		Answer<Integer> neededSteps)
		implements Fact {

	private static final double LEAST_STEP_KILOWATTS = 0.01;

	/** @return the need of {@code job}; none without an air-source heat pump or without auxiliary heat */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Boolean> fitted = stated.any(AuxiliaryHeat.class, aux -> Answer.of(aux), aux -> true);
		return Stated.entry(Stated.and(HeatPumpBalance.airSource(stated), fitted), () -> computed(stated));
	}

	private static AuxiliaryNeed computed(Stated stated) {
		Answer<Double> needed = needed(stated);
		Answer<Double> output = stated.number(AuxiliaryHeat.class, AuxiliaryHeat::heatOutput, KILOWATT);
		Answer<Integer> steps = stated.answer(AuxiliaryHeat.class, AuxiliaryHeat::stages);
		return new AuxiliaryNeed(Stated.quantity(needed, KILOWATT), Answer.both(output, needed, (fitted, need) -> fitted >= need),
				needed.then(need -> Answer.both(output, steps, (fitted, count) -> steps(need, fitted, count))));
	}

	private static Answer<Double> needed(Stated stated) {
		Answer<Boolean> furnace = stated.any(AuxiliaryHeat.class, AuxiliaryHeat::kind, kind -> kind == AuxiliaryHeat.Kind.FURNACE);
		return Stated.choose(furnace, () -> stated.number(Building.class, Building::designHeatLoss, KILOWATT),
				() -> HeatPumpBalance.shortfallKilowatts(stated));
	}

	private static int steps(double neededKilowatts, double fittedKilowatts, int count) {
		double step = Math.max(LEAST_STEP_KILOWATTS, fittedKilowatts / count);
		return Math.min(count, Shortfall.stages(neededKilowatts, step));
	}
}
