package org.setwright.trade.calculation.heatpump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

/** The worked set: 35,000 Btu/h at 47 °F, 21,000 at 17 °F, 36,000 cooling at 95 °F, region IV. Computed by hand. */
class LoadAndCapacityTest {
	private static final double AT_47 = 35_000;
	private static final double AT_17 = 21_000;
	private static final double COOLING = 36_000;

	@ParameterizedTest(name = "{0} °F: straight {1}, frost {2}, M1 {3}, M {4} Btu/h")
	@CsvSource({
			"47, 35000, 35000, 6624, 8085",
			"35, 29400, 26460, 16560, 13475",
			"32, 28000, 25550, 19044, 14823",
			"27, 25667, 24033, 23184, 17068",
			"17, 21000, 21000, 31464, 21560",
			" 5, 15400, 15400, 41400, 26950" })
	void capacityAndLoadFollowTheRatingProcedure(double outdoor, double straight, double frost, double m1, double m) {
		assertEquals(straight, HeatingCapacity.straight(AT_17, AT_47).at(outdoor), 0.5, "appendix M, interpolation seen");
		assertEquals(frost, HeatingCapacity.withUsualFrost(AT_17, AT_47).at(outdoor), 0.5, "default 35 °F point from memory");
		assertEquals(m1, LoadLine.appendixM1(ClimateRegion.IV, COOLING, false).at(outdoor), 0.5, "form from memory");
		assertEquals(m, LoadLine.appendixM(ClimateRegion.IV, 35_000).at(outdoor), 0.5, "appendix M, C = 0.77 seen");
	}

	@ParameterizedTest(name = "{0} °F: {1} Btu/h")
	@CsvSource({ "17, 29275", "5, 38520" })
	void variableSpeedUnitsHaveASmallerLoad(double outdoor, double computed) {
		assertEquals(computed, LoadLine.appendixM1(ClimateRegion.IV, COOLING, true).at(outdoor), 0.5);
	}

	@Test
	void loadIsNeverBelowZero() {
		assertEquals(0, LoadLine.appendixM1(ClimateRegion.IV, COOLING, false).at(70));
	}

	@Test
	void aTestedFrostPointReplacesTheUsualOne() {
		HeatingCapacity tested = new HeatingCapacity(AT_17, 28_000, AT_47);
		assertEquals(28_000, tested.at(35), 1e-9);
		assertEquals(24_500, tested.at(26), 1e-9, "half way between 17 and 35 °F");
		assertEquals(AT_17 + (AT_47 - AT_17) * 28 / 30, tested.at(45), 1e-9, "from 45 °F on the straight line counts");
	}

	@Test
	void capacityNeverGrowsWithColdBelowTheColdestRating() {
		assertEquals(38_000, HeatingCapacity.straight(38_000, 36_000).at(-10), "full speed at 17 °F, nominal at 47 °F");
	}

	@ParameterizedTest(name = "stops at {1}, starts again at {2}: {3} at {0} °F")
	@CsvSource({ "-5, 0, 10, 0", "0, 0, 10, 0", "5, 0, 10, 0.5", "10, 0, 10, 0.5", "10.1, 0, 10, 1" })
	void nearItsCutOutAUnitGivesNothingThenHalf(double outdoor, double stops, double starts, double factor) {
		assertEquals(factor, HeatingCapacity.cutOutFactor(outdoor, stops, starts), "appendix M, section 4.2.1, seen");
	}

	@ParameterizedTest(name = "region {0}: {1} Btu/h at 47 °F gives {2}, standard {3}")
	@CsvSource({ "IV, 35000, 35000, 35000", "V, 35000, 35000, 35000", "I, 36000, 16800, 15000", "II, 60000, 38000, 40000" })
	void designRequirementIsRoundedToAStandardOne(ClimateRegion region, double at47, double minimum, int standard) {
		assertEquals(minimum, DesignRequirement.minimumBtuPerHour(region, at47), 0.5, "form seen; computed");
		assertEquals(standard, DesignRequirement.nearestStandardBtuPerHour(minimum));
	}

	@ParameterizedTest(name = "the {0}th standard requirement is {1} W")
	@CsvSource({ "0, 1465.36", "15, 38099.26" })
	void standardRequirementsAreThoseSeenInWatts(int index, double watts) {
		assertEquals(watts, DesignRequirement.STANDARD_BTU_PER_HOUR.get(index) * 1055.05585262 / 3600, 0.15);
	}

	@Test
	void aWarmerDayNeverNeedsMoreAndNeverYieldsLess() {
		Inputs.forMany(4201, in -> {
			double at17 = in.number("at 17 °F", 8_000, 60_000);
			HeatingCapacity capacity = HeatingCapacity.straight(at17, at17 * in.number("ratio", 1, 2));
			LoadLine load = new LoadLine(in.number("load", 5_000, 100_000), in.number("design", -30, 39), 65);
			double cold = in.number("cold", -80, 139);
			double warm = in.number("warm", cold, 140);
			assertTrue(load.at(warm) <= load.at(cold));
			assertTrue(capacity.at(warm) >= capacity.at(cold) - 1e-6);
		});
	}

	@Test
	void loadsInTheWrongUnitAreRefused() {
		var refusal = assertThrows(IllegalArgumentException.class, () -> new LoadLine(45, 5, 65));
		assertEquals("heating load must be from 500 Btu/h to 1000000 Btu/h, not 45 Btu/h", refusal.getMessage());
	}

	@Test
	void aDesignTemperatureAboveTheZeroLoadIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new LoadLine(45_000, 65, 65));
	}
}
