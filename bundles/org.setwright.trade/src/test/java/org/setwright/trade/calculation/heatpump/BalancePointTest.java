package org.setwright.trade.calculation.heatpump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class BalancePointTest {
	private static final LoadLine JOB = new LoadLine(45_000, 5, 65);
	private static final HeatingCapacity STRAIGHT = HeatingCapacity.straight(21_000, 35_000);
	private static final HeatingCapacity FROST = HeatingCapacity.withUsualFrost(21_000, 35_000);

	@Test
	void balancePointOfTheWorkedJobOnAStraightLine() {
		double slope = (35_000 - 21_000) / 30.0;
		double closedForm = (45_000 * 65 / 60.0 - (21_000 - 17 * slope)) / (slope + 750);
		assertEquals(29.33, closedForm, 0.005, "computed");
		assertEquals(closedForm, BalancePoint.fahrenheit(STRAIGHT, JOB).orElseThrow(), 1e-9);
	}

	@Test
	void balancePointOfTheWorkedJobWithFrost() {
		assertEquals(31.24, BalancePoint.fahrenheit(FROST, JOB).orElseThrow(), 0.005, "computed");
	}

	@Test
	void aHeatPumpThatKeepsUpOnlyPastTheFrostStepBalancesAtIt() {
		HeatingCapacity steep = HeatingCapacity.withUsualFrost(10_000, 30_000);
		LoadLine load = new LoadLine(27_000, 45, 65);
		assertEquals(45, BalancePoint.fahrenheit(steep, load).orElseThrow(), 1e-9);
	}

	@Test
	void aHeatPumpMuchLargerThanTheHouseHasNoBalancePoint() {
		assertEquals(OptionalDouble.empty(),
				BalancePoint.fahrenheit(HeatingCapacity.straight(60_000, 60_000), new LoadLine(5_000, 5, 65)));
	}

	@Test
	void aColdBalancePointRestsOnExtrapolation() {
		double cold = BalancePoint.fahrenheit(STRAIGHT, new LoadLine(18_000, 5, 65)).orElseThrow();
		assertTrue(HeatingCapacity.extrapolates(cold), cold + " °F is below the coldest rating");
	}

	@Test
	void capacityMeetsLoadAtTheBalancePointAndFallsShortJustBelow() {
		Inputs.forMany(4202, in -> {
			double at17 = in.number("at 17 °F", 8_000, 60_000);
			double at47 = at17 * in.number("ratio", 0.9, 2);
			HeatingCapacity capacity = in.oneOf("frost", true, false) ? HeatingCapacity.withUsualFrost(at17, at47)
					: HeatingCapacity.straight(at17, at47);
			LoadLine load = new LoadLine(in.number("load", 5_000, 150_000), in.number("design", -30, 39),
					in.number("zero", 40, 75));
			OptionalDouble balance = BalancePoint.fahrenheit(capacity, load);
			balance.ifPresent(t -> {
				assertTrue(capacity.at(t) >= load.at(t) - 1e-6, "keeps up at " + t);
				assertTrue(t < -79.99 || capacity.at(t - 0.01) < load.at(t - 0.01), "falls short just below " + t);
			});
			double above = in.number("above", balance.orElse(-80), 140);
			assertTrue(capacity.at(above) >= load.at(above) - 1e-6, "keeps up above, at " + above);
		});
	}

	@Test
	void aLargerLoadNeverLowersTheBalancePoint() {
		Inputs.forMany(4203, in -> {
			double at17 = in.number("at 17 °F", 8_000, 60_000);
			HeatingCapacity capacity = HeatingCapacity.withUsualFrost(at17, at17 * in.number("ratio", 1, 2));
			double small = in.number("load", 5_000, 100_000);
			double low = BalancePoint.fahrenheit(capacity, new LoadLine(small, 5, 65)).orElse(-80);
			double high = BalancePoint.fahrenheit(capacity, new LoadLine(small * in.number("more", 1, 1.5), 5, 65)).orElse(-80);
			assertTrue(high >= low - 1e-9, low + " °F, then " + high + " °F");
		});
	}

	@Test
	void shortfallAtDesignOfTheWorkedJob() {
		assertEquals(29_600, Shortfall.btuPerHour(FROST, JOB, 5), 1e-6, "computed");
		assertEquals(8.675, Shortfall.kilowatts(FROST, JOB, 5), 5e-4, "computed");
		assertEquals(0, Shortfall.btuPerHour(FROST, JOB, 40), "above the balance point nothing is missing");
	}

	@ParameterizedTest(name = "{0} kW in stages of {1} kW: {2}")
	@CsvSource({ "8.675, 5, 2", "10, 5, 2", "10.01, 5, 3", "0, 5, 0", "0.1, 9.6, 1", "15, 7.5, 2" })
	void stagesAreEnoughAndNotMore(double needed, double stage, int stages) {
		assertEquals(stages, Shortfall.stages(needed, stage), "computed");
	}

	@ParameterizedTest(name = "balance {0} °F, margin {1} F°: {2} °F")
	@CsvSource({ "29.33, 0, 30", "31.24, 3, 35", "30, 0, 30", "-4.5, 0, -4" })
	void auxiliaryHeatIsLockedOutAboveTheBalancePointAndNeverBelowIt(double balance, double margin, int lockout) {
		assertEquals(lockout, Lockouts.auxiliaryFahrenheit(balance, margin),
				"ASHRAE 90.1-2016 6.4.3.5 and IECC C403.4.1.1, seen in secondary copies: only when the heat pump cannot carry the load");
	}

	@ParameterizedTest(name = "balance {0} °F, cold-climate unit {1}: at most {2} °F")
	@CsvSource({ "29.33, false, 17", "29.33, true, 5", "10, false, 10", "-4.5, true, -5" })
	void compressorLockoutStaysBelowThePublishedLimits(double balance, boolean coldClimate, int warmest) {
		assertEquals(warmest, Lockouts.warmestCompressorFahrenheit(balance, coldClimate),
				"best-practice guide for existing homes, seen: 17 °F, cold-climate 5 °F, not above the balance point");
	}

	@Test
	void aStageOfNoSizeIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> Shortfall.stages(5, 0));
	}
}
