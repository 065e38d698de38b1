package org.setwright.trade.calculation.dualfuel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class DualFuelTest {
	private static final CopLine LINE = new CopLine(2.3, 3.4);

	@ParameterizedTest(name = "{0} $/kWh against {1} $ for {2} Btu at {3}: {4}")
	@CsvSource({
			"0.15, 1.20, 100000, 0.95, 3.4804, 12.632",
			"0.17, 1.47, 100000, 0.95, 3.2199, 15.474",
			"0.15, 2.50, 91333, 0.95, 1.5258, 28.813",
			"0.15, 2.50, 91452, 0.95, 1.5278, 28.776" })
	void breakEvenFollowsFromDeliveredCost(double electric, double fuel, double btu, double efficiency, double cop,
			double perMillion) {
		assertEquals(cop, DeliveredHeat.breakEvenCop(electric, fuel, btu, efficiency), cop * 1e-4,
				"computed with 3412 Btu/kWh, which moves it by 0.004 %");
		assertEquals(perMillion, DeliveredHeat.fuelPricePerMillionBtu(fuel, btu, efficiency), 6e-4, "EIA method seen; computed");
	}

	@ParameterizedTest(name = "{0} $/kWh at COP {1}: {2} $ per million Btu")
	@CsvSource({ "0.15, 1, 43.962", "0.15, 2.5, 17.585", "0.15, 3, 14.654", "0.17, 1, 49.824", "0.17, 2.5, 19.930", "0.17, 3, 16.608" })
	void electricHeatCostsLessTheHigherItsCop(double price, double cop, double perMillion) {
		assertEquals(perMillion, DeliveredHeat.electricPricePerMillionBtu(price, cop), perMillion * 1e-4, "computed with 3412");
	}

	@ParameterizedTest(name = "{0}: {1} Btu")
	@CsvSource({
			"THERM_OF_NATURAL_GAS, 100000, 0",
			"HUNDRED_CUBIC_FEET_OF_NATURAL_GAS, 103750, 0",
			"HUNDRED_CUBIC_FEET_OF_NATURAL_GAS, 102500, 0.013",
			"GALLON_OF_PROPANE, 91452, 0",
			"GALLON_OF_PROPANE, 91333, 0.002",
			"GALLON_OF_PROPANE, 91500, 0.001",
			"GALLON_OF_HEATING_OIL, 138500, 0",
			"GALLON_OF_HEATING_OIL, 138690, 0.002",
			"GALLON_OF_HEATING_OIL, 137381, 0.009" })
	void heatContentsAreThoseOfTheEnergyInformationAdministration(FuelUnit fuel, double seen, double share) {
		assertEquals(seen, fuel.btu(), seen * share + 1e-9, "units and calculators page, current and 2012 averages, seen");
	}

	@ParameterizedTest(name = "{0} Btu a cubic foot")
	@CsvSource({ "1036", "1039" })
	void gasByVolumeLiesWithinTheYearlyAverages(double perCubicFoot) {
		assertEquals(perCubicFoot, FuelUnit.HUNDRED_CUBIC_FEET_OF_NATURAL_GAS.btu() / 100, 1.51, "seen");
	}

	@Test
	void aKilowattHourIs3412Btu() {
		assertEquals(3412.142, DeliveredHeat.BTU_PER_KILOWATT_HOUR, 5e-4, "3412 seen at EIA; exact by definition of the Btu");
	}

	@ParameterizedTest(name = "break-even {0}: {1} °F, extrapolated {2}")
	@CsvSource({ "2.5, 22.45, false", "2.0, 8.82, true", "3.4804, 49.19, true" })
	void changeoverByCostSaysWhenItIsExtrapolated(double breakEven, double fahrenheit, boolean extrapolated) {
		Changeover.At at = assertInstanceOf(Changeover.At.class, Changeover.byCost(LINE, breakEven));
		assertEquals(fahrenheit, at.fahrenheit(), 0.005, "computed");
		assertEquals(extrapolated, at.extrapolated());
	}

	@Test
	void aLevelCopLineGivesNoTemperature() {
		CopLine level = new CopLine(3, 3);
		assertInstanceOf(Changeover.HeatPumpAlways.class, Changeover.byCost(level, 2.9));
		assertInstanceOf(Changeover.BurnerAlways.class, Changeover.byCost(level, 3.1));
	}

	@Test
	void theHighestLimitIsTheOneToWorkWith() {
		OptionalDouble none = OptionalDouble.empty();
		assertEquals(OptionalDouble.of(29), Changeover.workingFahrenheit(OptionalDouble.of(22), OptionalDouble.of(29),
				OptionalDouble.of(17)));
		assertEquals(OptionalDouble.of(22), Changeover.workingFahrenheit(OptionalDouble.of(22), none, OptionalDouble.of(17)));
		assertEquals(none, Changeover.workingFahrenheit(none, none, none));
	}

	@Test
	void atTheChangeoverBothHeatsCostTheSameAndBelowTheBurnerIsCheaper() {
		Inputs.forMany(4204, in -> {
			double electric = in.number("electric price", 0.05, 0.5);
			double fuel = in.number("fuel price", 0.5, 5);
			double efficiency = in.number("efficiency", 0.6, 0.98);
			CopLine line = new CopLine(in.number("cop at 17 °F", 1.5, 2.5), in.number("cop at 47 °F", 2.6, 4.5));
			double btu = in.oneOf("fuel", FuelUnit.values()).btu();
			double burner = DeliveredHeat.fuelPricePerMillionBtu(fuel, btu, efficiency);
			var at = (Changeover.At) Changeover.byCost(line,
					DeliveredHeat.breakEvenCop(electric, fuel, btu, efficiency));
			if (at.fahrenheit() > 17 && at.fahrenheit() < 140) {
				assertEquals(burner, DeliveredHeat.electricPricePerMillionBtu(electric, line.at(at.fahrenheit())), burner * 1e-9);
				assertTrue(DeliveredHeat.electricPricePerMillionBtu(electric, line.at(at.fahrenheit() - 1)) > burner);
			}
		});
	}

	@Test
	void dearerElectricityNeverLowersTheChangeover() {
		Inputs.forMany(4205, in -> {
			double cheap = in.number("electric price", 0.05, 0.5);
			double dear = cheap * in.number("more", 1, 2);
			double low = ((Changeover.At) Changeover.byCost(LINE, DeliveredHeat.breakEvenCop(cheap, 1.2, 100_000, 0.9))).fahrenheit();
			double high = ((Changeover.At) Changeover.byCost(LINE, DeliveredHeat.breakEvenCop(dear, 1.2, 100_000, 0.9))).fahrenheit();
			assertTrue(high >= low);
		});
	}

	@Test
	void efficiencyWrittenInPercentIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> DeliveredHeat.fuelPricePerMillionBtu(1.2, 100_000, 95));
	}

	@Test
	void aCopThatGrowsWithColdIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new CopLine(3.4, 2.3));
	}
}
