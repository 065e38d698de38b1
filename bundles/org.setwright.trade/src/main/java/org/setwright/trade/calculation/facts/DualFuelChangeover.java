package org.setwright.trade.calculation.facts;

import static org.setwright.trade.catalogue.Unit.FAHRENHEIT;

import java.util.List;
import java.util.function.Function;
import org.setwright.trade.calculation.Range;
import org.setwright.trade.calculation.dualfuel.Changeover;
import org.setwright.trade.calculation.dualfuel.CopLine;
import org.setwright.trade.calculation.dualfuel.DeliveredHeat;
import org.setwright.trade.calculation.dualfuel.FuelUnit;
import org.setwright.trade.catalogue.About;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Asked;
import org.setwright.trade.catalogue.Calculated;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.IndoorUnit.Fuel;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.EnergyPrices;

/** When the furnace of a dual-fuel job takes over from its air-source heat pump. */
@About(label = "dual-fuel changeover", meaning = "At which outdoor temperature the furnace of a dual-fuel job should take over from its heat pump.")
public record DualFuelChangeover(
		@Calculated(from = { "OutdoorUnit.kind", "AuxiliaryHeat.kind", "IndoorUnit.fuel", "IndoorUnit.efficiency",
				"EnergyPrices.electricityPerKwh", "EnergyPrices.naturalGasPerTherm", "EnergyPrices.propanePerGallon",
				"EnergyPrices.oilPerGallon" },
				formula = "price of a Btu from resistance heat over price of a Btu from the furnace, its efficiency counted",
				source = "U.S. Energy Information Administration, comparing the cost of heating fuels; heat contents from its units page")
		@Asked(label = "break-even COP", meaning = "The COP above which heat from the heat pump costs less than heat from the furnace.", least = 0, most = 10000)
		Answer<Quantity> breakEvenCop,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.copAt47F", "OutdoorUnit.copAt17F", "AuxiliaryHeat.kind",
				"IndoorUnit.fuel", "IndoorUnit.efficiency", "EnergyPrices.electricityPerKwh", "EnergyPrices.naturalGasPerTherm",
				"EnergyPrices.propanePerGallon", "EnergyPrices.oilPerGallon" },
				through = { "DualFuelChangeover.breakEvenCop" },
				formula = "where the straight line through the COP at 17 °F and at 47 °F meets the break-even COP",
				source = "two-point interpolation, common practice")
		@Asked(label = "changeover by cost", meaning = "Outdoor temperature below which heat from the furnace costs less; -80 °F when it never does, 140 °F when it always does.", unit = FAHRENHEIT, least = -80, most = 140)
		Answer<Quantity> changeoverByCost,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.copAt47F", "OutdoorUnit.copAt17F",
				"OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F", "OutdoorUnit.lowestOutdoorTemperature",
				"AuxiliaryHeat.kind", "IndoorUnit.fuel", "IndoorUnit.efficiency", "Building.designHeatLoss",
				"Climate.heatingDesignTemperature", "EnergyPrices.electricityPerKwh", "EnergyPrices.naturalGasPerTherm",
				"EnergyPrices.propanePerGallon", "EnergyPrices.oilPerGallon" },
				through = { "DualFuelChangeover.changeoverByCost", "HeatPumpBalance.balancePoint" },
				formula = "the highest of changeover by cost, balance point and the maker's lowest outdoor temperature, rounded up to a whole °F",
				source = "common practice")
		@Asked(label = "working changeover", meaning = "Outdoor temperature below which the furnace should heat instead of the heat pump, all limits counted.", unit = FAHRENHEIT, least = -80, most = 140)
		Answer<Quantity> workingChangeover,
		@Calculated(from = { "OutdoorUnit.kind", "OutdoorUnit.copAt47F", "OutdoorUnit.copAt17F",
				"OutdoorUnit.heatingCapacityAt47F", "OutdoorUnit.heatingCapacityAt17F", "OutdoorUnit.lowestOutdoorTemperature",
				"AuxiliaryHeat.kind", "IndoorUnit.fuel", "IndoorUnit.efficiency", "Building.designHeatLoss",
				"Climate.heatingDesignTemperature", "EnergyPrices.electricityPerKwh", "EnergyPrices.naturalGasPerTherm",
				"EnergyPrices.propanePerGallon", "EnergyPrices.oilPerGallon" },
				through = { "DualFuelChangeover.workingChangeover", "DualFuelChangeover.changeoverByCost" },
				formula = "whether the highest limit is a changeover by cost outside 17 to 47 °F",
				source = "common practice")
		@Asked(label = "extrapolated", says = "is extrapolated|is not extrapolated", meaning = "Whether the working changeover rests on a COP outside its ratings, so that it is only a guess.")
		Answer<Boolean> extrapolated)
		implements Fact {

	private static final double ROUNDING = 1e-9;

	/** @return the changeover of {@code job}; none unless an air-source heat pump stands beside a fuel-fired furnace */
	public static Job.Entry of(Job job) {
		Stated stated = new Stated(job);
		Answer<Boolean> furnace = stated.any(AuxiliaryHeat.class, AuxiliaryHeat::kind, kind -> kind == AuxiliaryHeat.Kind.FURNACE);
		Answer<Boolean> burns = stated.any(IndoorUnit.class, IndoorUnit::fuel, fuel -> fuel != Fuel.ELECTRIC && fuel != Fuel.NO_FUEL);
		return Stated.entry(Stated.and(HeatPumpBalance.airSource(stated), furnace, burns), () -> computed(stated));
	}

	private static DualFuelChangeover computed(Stated stated) {
		Answer<Double> breakEven = breakEven(stated);
		Answer<Changeover> changeover = Answer.both(line(stated), breakEven, Changeover::byCost);
		Answer<Double> byCost = changeover.map(DualFuelChangeover::fahrenheit);
		Answer<Double> highest = Stated.all(List.of(byCost, HeatPumpBalance.balancePoint(stated),
				stated.number(OutdoorUnit.class, OutdoorUnit::lowestOutdoorTemperature, FAHRENHEIT)), Math::max);
		return new DualFuelChangeover(Stated.quantity(breakEven, Unit.NONE), Stated.quantity(byCost, FAHRENHEIT),
				Stated.quantity(highest.map(t -> Math.ceil(t - ROUNDING)), FAHRENHEIT),
				Answer.both(highest, byCost, (limit, cost) -> limit.equals(cost) && CopLine.extrapolates(cost)));
	}

	/** A unit stated to do better in cold than in mild air is taken to do no better than its lower figure anywhere. */
	private static Answer<CopLine> line(Stated stated) {
		return Answer.both(stated.number(OutdoorUnit.class, OutdoorUnit::copAt17F, Unit.NONE),
				stated.number(OutdoorUnit.class, OutdoorUnit::copAt47F, Unit.NONE),
				(cold, mild) -> new CopLine(Math.min(cold, mild), mild));
	}

	private static Answer<Double> breakEven(Stated stated) {
		Answer<Double> electric = price(stated, EnergyPrices::electricityPerKwh);
		Answer<Double> efficiency = stated.number(IndoorUnit.class, IndoorUnit::efficiency, Unit.PERCENT).map(p -> p / 100);
		return stated.answer(IndoorUnit.class, IndoorUnit::fuel).then(fuel -> switch (fuel) {
			case NATURAL_GAS -> breakEven(electric, price(stated, EnergyPrices::naturalGasPerTherm), FuelUnit.THERM_OF_NATURAL_GAS, efficiency);
			case PROPANE -> breakEven(electric, price(stated, EnergyPrices::propanePerGallon), FuelUnit.GALLON_OF_PROPANE, efficiency);
			case OIL -> breakEven(electric, price(stated, EnergyPrices::oilPerGallon), FuelUnit.GALLON_OF_HEATING_OIL, efficiency);
			case ELECTRIC, NO_FUEL -> Answer.unknown();
		});
	}

	private static Answer<Double> breakEven(Answer<Double> electric, Answer<Double> fuel, FuelUnit unit, Answer<Double> efficiency) {
		return efficiency.then(e -> Answer.both(electric, fuel, (kwh, price) -> DeliveredHeat.breakEvenCop(kwh, price, unit.btu(), e)));
	}

	private static Answer<Double> price(Stated stated, Function<EnergyPrices, Answer<Quantity>> field) {
		return stated.number(EnergyPrices.class, field, Unit.NONE);
	}

	private static double fahrenheit(Changeover changeover) {
		Range range = Range.OUTDOOR_FAHRENHEIT;
		if (changeover instanceof Changeover.At at) {
			return Math.min(range.most(), Math.max(range.least(), at.fahrenheit()));
		}
		return changeover instanceof Changeover.HeatPumpAlways ? range.least() : range.most();
	}
}
