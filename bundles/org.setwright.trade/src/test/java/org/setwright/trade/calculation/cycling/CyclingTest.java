package org.setwright.trade.calculation.cycling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class CyclingTest {
	@ParameterizedTest(name = "{0} per hour at {1}: {2} per hour, {3} min on, {4} min off")
	@CsvSource({
			"2.5, 0.10, 0.900, , ", "2.5, 0.25, 1.875, , ", "2.5, 0.50, 2.500, , ", "2.5, 0.75, 1.875, , ",
			"3, 0.10, 1.080, 5.56, 50.00", "3, 0.25, 2.250, 6.67, 20.00",
			"3, 0.50, 3.000, 10.00, 10.00", "3, 0.75, 2.250, 20.00, 6.67",
			"6, 0.10, 2.160, 2.78, 25.00", "6, 0.25, 4.500, 3.33, 10.00",
			"6, 0.50, 6.000, 5.00, 5.00", "6, 0.75, 4.500, 10.00, 3.33" })
	void aCycleRateEntryMeansTheseMinutes(double rate, double fraction, double cycles, Double on, Double off) {
		CyclingCurve curve = new CyclingCurve(rate);
		assertEquals(cycles, curve.cyclesPerHour(fraction), 5e-4, "Henderson and Rengarajan 1996, times seen, rate computed");
		if (on != null) {
			assertEquals(on, curve.onMinutes(fraction), 5e-3);
			assertEquals(off, curve.offMinutes(fraction), 5e-3);
		}
	}

	@ParameterizedTest(name = "{0} min on, {1} min off: {4}")
	@CsvSource({
			"6, 24, 2.000, 3.125, '10 CFR 430 subpart B appendix M, single speed; from memory'",
			"12, 48, 1.000, 1.5625, '10 CFR 430 subpart B appendix M, variable speed; from memory'",
			"3.87, 13.3, 3.494, 5.004, 'ASHRAE 103-1993, furnace; from memory'",
			"9.68, 33.26, 1.397, 2.001, 'ASHRAE 103-1993, boiler; from memory'" })
	void ratingTestsLieOnUsualCurves(double on, double off, double cycles, double most, String source) {
		CyclingCurve curve = CyclingCurve.seen(on, off);
		assertEquals(most, curve.mostCyclesPerHour(), 1e-3, source);
		assertEquals(cycles, curve.cyclesPerHour(on / (on + off)), 1e-3, source);
	}

	@ParameterizedTest(name = "{0} per hour: never shorter than {1} min")
	@CsvSource({ "3, 5", "6, 2.5" })
	void theShortestRunFollowsFromTheRate(double rate, double minutes) {
		assertEquals(minutes, new CyclingCurve(rate).shortestOnMinutes(), 1e-12, "computed");
	}

	@Test
	void equipmentThatAlwaysOrNeverRunsDoesNotCycle() {
		CyclingCurve curve = new CyclingCurve(3);
		assertEquals(0, curve.cyclesPerHour(0));
		assertEquals(0, curve.cyclesPerHour(1));
		assertEquals(Double.POSITIVE_INFINITY, curve.onMinutes(1));
		assertEquals(Double.POSITIVE_INFINITY, curve.offMinutes(0));
	}

	@Test
	void onAndOffTimesMakeUpTheHour() {
		Inputs.forMany(4206, in -> {
			CyclingCurve curve = new CyclingCurve(in.number("rate", 0.5, 20));
			double x = in.number("fraction", 0.001, 0.999);
			double cycle = curve.onMinutes(x) + curve.offMinutes(x);
			assertEquals(60, cycle * curve.cyclesPerHour(x), 1e-6);
			assertEquals(x, curve.onMinutes(x) / cycle, 1e-9);
			assertEquals(curve.cyclesPerHour(x), curve.cyclesPerHour(1 - x), 1e-9, "as often at a load as at its complement");
			assertTrue(curve.onMinutes(x) >= curve.shortestOnMinutes());
		});
	}

	@ParameterizedTest(name = "load factor {0}, coefficient {1}: factor {2}, run time {3}")
	@CsvSource({
			"0.10, 0.25, 0.7750, 0.1290", "0.50, 0.25, 0.8750, 0.5714", "0.75, 0.25, 0.9375, 0.8000", "1.00, 0.25, 1.0000, 1.0000",
			"0.10, 0.20, 0.8200, 0.1220", "0.50, 0.20, 0.9000, 0.5556", "0.75, 0.20, 0.9500, 0.7895", "1.00, 0.20, 1.0000, 1.0000" })
	void cyclingCostsEfficiency(double loadFactor, double degradation, double factor, double runTime) {
		assertEquals(factor, PartLoad.factor(loadFactor, degradation), 5e-5, "AHRI 210/240 form; computed");
		assertEquals(runTime, PartLoad.runTimeFraction(loadFactor, degradation), 5e-5, "computed");
	}

	@Test
	void defaultDegradationIsThePublishedOne() {
		assertEquals(0.25, PartLoad.USUAL_DEGRADATION, "AHRI 210/240 to 2017, and heating in 2023 (6.1.3.2.1), seen");
		assertEquals(0.20, PartLoad.COOLING_DEGRADATION_2023, "AHRI 210/240-2023 6.1.3.1, seen");
	}

	@Test
	void runTimeGrowsWithLoadAndIsNeverLessThanIt() {
		Inputs.forMany(4207, in -> {
			double cd = in.number("coefficient", 0, 0.5);
			double small = in.number("small", 0, 1);
			double large = in.number("large", small, 1);
			assertTrue(PartLoad.runTimeFraction(large, cd) >= PartLoad.runTimeFraction(small, cd));
			assertTrue(PartLoad.runTimeFraction(small, cd) >= small);
		});
	}

	@Test
	void aFractionWrittenInPercentIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new CyclingCurve(3).cyclesPerHour(50));
	}
}
