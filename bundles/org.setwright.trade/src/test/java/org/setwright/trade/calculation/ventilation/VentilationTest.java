package org.setwright.trade.calculation.ventilation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class VentilationTest {
	@ParameterizedTest(name = "{0} ft2, {1} bedrooms: 62.2 {2} cfm, residential code {3} cfm")
	@CsvSource({ "1000, 2, 52.5, 32.5", "1500, 3, 75.0, 45.0", "2000, 3, 90.0, 50.0", "2400, 4, 109.5, 61.5" })
	void needDependsOnTheRuleThatApplies(double area, int bedrooms, double ashrae, double code) {
		assertEquals(ashrae, VentilationStandard.ASHRAE_62_2_EQUATION.cfm(area, bedrooms), 1e-9, "62.2-2013 form seen; computed");
		assertEquals(code, VentilationStandard.RESIDENTIAL_CODE.cfm(area, bedrooms), 1e-9,
				"IRC and IMC 4-9 form seen; 2000 ft2, 3 bedrooms is a published worked example");
	}

	@ParameterizedTest(name = "up to {0} ft2: {1} {2} {3} {4} {5} cfm")
	@CsvSource({
			" 500,  30,  38,  45,  53,  60", "1000,  45,  53,  60,  68,  75", "1500,  60,  68,  75,  83,  90",
			"2000,  75,  83,  90,  98, 105", "2500,  90,  98, 105, 113, 120", "3000, 105, 113, 120, 128, 135",
			"3500, 120, 128, 135, 143, 150", "4000, 135, 143, 150, 158, 165", "4500, 150, 158, 165, 173, 180",
			"5000, 165, 173, 180, 188, 195" })
	void tableIsThatOfAshrae622(int top, int one, int two, int three, int four, int five) {
		int[] published = { one, two, three, four, five };
		for (int bedrooms = 1; bedrooms <= 5; bedrooms++) {
			String source = "ASHRAE 62.2 table 4.1a (2016), seen twice; " + top + " ft2, " + bedrooms;
			assertEquals(published[bedrooms - 1], VentilationStandard.ASHRAE_62_2_TABLE.cfm(top, bedrooms), source);
			assertEquals(published[bedrooms - 1], VentilationStandard.ASHRAE_62_2_TABLE.cfm(Math.max(100, top - 499), bedrooms), source);
		}
	}

	@Test
	void theTableRefusesWhatItDoesNotList() {
		assertThrows(IllegalArgumentException.class, () -> VentilationStandard.ASHRAE_62_2_TABLE.cfm(5001, 3));
		assertThrows(IllegalArgumentException.class, () -> VentilationStandard.ASHRAE_62_2_TABLE.cfm(3000, 6));
	}

	@Test
	void aHomeWithoutBedroomCountsAsOne() {
		for (VentilationStandard rule : VentilationStandard.values()) {
			assertEquals(rule.cfm(700, 1), rule.cfm(700, 0));
		}
	}

	@Test
	void theMetricFormOfAshrae622() {
		assertEquals(25.5, VentilationStandard.ashraeLitresPerSecond(100, 2), 1e-9, "form from memory; computed");
	}

	@ParameterizedTest(name = "{0} cfm by a fan of {1} cfm: {2} min an hour")
	@CsvSource({ "90, 90, 60", "90, 120, 45", "90, 150, 36", "50, 100, 30" })
	void aLargerFanRests(double needed, double fan, double minutes) {
		assertEquals(minutes, IntermittentFan.minutesPerHour(needed, fan).orElseThrow(), 1e-9,
				"62.2-2016 section 4.5, from memory; computed");
	}

	@Test
	void aFanThatIsTooSmallIsRefusedWhateverItsRunningTime() {
		assertEquals(OptionalDouble.empty(), IntermittentFan.minutesPerHour(90, 89.9));
	}

	@ParameterizedTest(name = "{0} % of 4 hours: {1}")
	@CsvSource({ "25, 4", "33, 3", "50, 2", "66, 1.5", "75, 1.3", "100, 1.0", "49.9, 3", "99, 1.3" })
	void factorsOfTheResidentialCode(double percent, double factor) {
		assertEquals(factor, IntermittentFan.residentialCodeFactor(percent).orElseThrow(),
				"IRC table M1505.4.3(2), values from memory");
	}

	@Test
	void theResidentialCodeAllowsNoLessThanAnHourInFour() {
		assertEquals(OptionalDouble.empty(), IntermittentFan.residentialCodeFactor(24.9), "1 h in every 4 h, seen (IMC 403)");
	}

	@Test
	void localExhaustIsThatOfTheMechanicalCode() {
		assertEquals(100, LocalExhaust.KITCHEN.intermittentCfm(), "IMC section 403 commentary, seen");
		assertEquals(25, LocalExhaust.KITCHEN.continuousCfm());
		assertEquals(50, LocalExhaust.BATHROOM.intermittentCfm());
		assertEquals(20, LocalExhaust.BATHROOM.continuousCfm());
	}

	@Test
	void moreFloorOrMoreBedroomsNeverNeedLessAirAndTheTableNeverLessThanTheEquation() {
		Inputs.forMany(4210, in -> {
			double area = in.number("area", 100, 4900);
			int bedrooms = in.whole("bedrooms", 0, 4);
			for (VentilationStandard rule : VentilationStandard.values()) {
				assertTrue(rule.cfm(area + 100, bedrooms) >= rule.cfm(area, bedrooms));
				assertTrue(rule.cfm(area, bedrooms + 1) >= rule.cfm(area, bedrooms));
			}
			assertTrue(VentilationStandard.ASHRAE_62_2_TABLE.cfm(area, bedrooms) >= VentilationStandard.ASHRAE_62_2_EQUATION.cfm(area, bedrooms) - 0.5);
		});
	}

	@Test
	void anAreaInSquareMetresIsRefusedWhenTooSmallForFeet() {
		assertThrows(IllegalArgumentException.class, () -> VentilationStandard.RESIDENTIAL_CODE.cfm(90, 3));
	}
}
