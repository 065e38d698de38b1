package org.setwright.trade.calculation.humidity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class HumidityTest {
	@ParameterizedTest(name = "{0} °F, {1} %: {2} °F")
	@CsvSource({
			"70, 30, 37.177, 37.187", "70, 40, 44.598, 44.650", "70, 50, 50.528, 50.591", "75, 50, 55.120, 55.182",
			"70, 15, 21.592, 21.612" })
	void dewPointAgreesWithALibraryAndAPolynomial(double fahrenheit, double percent, double library, double polynomial) {
		double computed = MoistAir.dewPointFahrenheit(fahrenheit, percent);
		assertEquals(library, computed, 0.002, "open psychrometric library, run; same equations, iterated");
		assertEquals(polynomial, computed, 0.1, "ASHRAE Fundamentals 2017 chapter 1, equations 37 and 38, from memory");
	}

	@ParameterizedTest(name = "{0} °C, {1} %: {2} °C")
	@CsvSource({ "20, 50, 9.272, 9.303, 9.261", "25, 50, 13.864, 13.893, 13.858", "21, 40, 6.899, 6.925, 6.884" })
	void dewPointInCelsiusAgreesWithThreeMethods(double celsius, double percent, double library, double polynomial, double magnus) {
		double computed = MoistAir.dewPointCelsius(celsius, percent);
		assertEquals(library, computed, 0.001, "open psychrometric library, run");
		assertEquals(polynomial, computed, 0.05, "ASHRAE polynomial, from memory");
		assertEquals(magnus, computed, 0.05, "Magnus form, Alduchov and Eskridge 1996, from memory");
	}

	@ParameterizedTest(name = "{0} °F: {1} psi, {2}")
	@CsvSource({
			"32, 0.088640, library run", "70, 0.363277, library run", "77, 0.459656, library run",
			"23, 0.058268, 'ASHRAE Fundamentals 2017 chapter 1 table 3, seen in a library''s own tests'",
			"41, 0.12656, same", "77, 0.45973, same", "122, 1.79140, same", "212, 14.7094, same" })
	void saturationPressureAgreesWithTheHandbook(double fahrenheit, double psi, String source) {
		assertEquals(psi, MoistAir.saturationPsi(fahrenheit), psi * 3e-4, source);
	}

	@Test
	void vapourPressureGivesTheHumidityRatioOfALibrary() {
		double vapour = 0.50 * MoistAir.saturationPsi(75);
		assertEquals(0.0092357, 0.621945 * vapour / (14.696 - vapour), 2e-6, "75 °F, 50 %: open psychrometric library, run");
	}

	@ParameterizedTest(name = "surface at {0} °F runs wet at {1} %")
	@CsvSource({ "30, 22.3", "35, 27.5", "40, 33.5", "45, 40.6", "50, 49.0" })
	void condensationInARoomAt70(double surface, double percent) {
		assertEquals(percent, WinterHumidity.condensationPercent(70, surface), 0.06, "open psychrometric library, run");
	}

	@ParameterizedTest(name = "{0} °F outdoors: {1} %")
	@CsvSource({
			"20, 35, 'ascribed to ASHRAE, and Minnesota; seen in secondary copies'", "10, 30, same", "0, 25, same",
			"-10, 20, same", "-20, 15, same", "32, 40, 'Minnesota, and a window-trade table; seen'",
			"40, 40, 'Minnesota; seen (window trade: 45)'", "-40, 15, 'Minnesota; seen'" })
	void winterLimitIsThePublishedOneAtItsLowerEdge(double outdoor, double percent, String source) {
		assertEquals(percent, WinterHumidity.publishedPercent(outdoor), 1e-9, source);
		assertEquals(percent, WinterHumidity.limitPercent(WindowGlass.DOUBLE, 70, outdoor), 1e-9, source);
	}

	@ParameterizedTest(name = "{0} °F outdoors: glass {1} °F, wet at {2} %")
	@CsvSource({ "-20, 39.8, 33", "0, 46.5, 43", "20, 53.2, 55" })
	void doubleGlassIsWarmerThanThePublishedLimitAsks(double outdoor, double glass, double percent) {
		double computed = WindowGlass.DOUBLE.insideFahrenheit(70, outdoor);
		assertEquals(glass, computed, 0.05, "computed: U 0.49, film 1.46 Btu/h ft2 °F");
		assertEquals(percent, WinterHumidity.condensationPercent(70, computed), 0.5, "computed");
		assertTrue(WinterHumidity.publishedPercent(outdoor) < percent);
	}

	@Test
	void clearDoubleGlassAt40PercentBeginsToFogNearZero() {
		assertEquals(0, outdoorWhereWet(WindowGlass.DOUBLE, 40), 8, "building advice forum, seen: about 0 °F at 70 °F indoors");
	}

	@Test
	void singleGlassAllowsLessThanThePublishedLimitInFrost() {
		double glass = 70 - 1.04 / 1.46 * 70;
		assertEquals(WinterHumidity.condensationPercent(70, glass), WinterHumidity.limitPercent(WindowGlass.SINGLE, 70, 0), 1e-9);
		assertTrue(WinterHumidity.limitPercent(WindowGlass.SINGLE, 70, 0) < 25);
	}

	@Test
	void betterGlazingAndMilderWeatherNeverLowerTheLimitAndTheGlassStaysDry() {
		Inputs.forMany(4211, in -> {
			double outdoor = in.number("outdoor", -60, 60);
			double indoor = in.number("indoor", 60, 80);
			double before = 0;
			for (WindowGlass glazing : WindowGlass.values()) {
				double limit = WinterHumidity.limitPercent(glazing, indoor, outdoor);
				assertTrue(limit >= before && limit <= 40);
				assertTrue(WinterHumidity.limitPercent(glazing, indoor, outdoor + 1) >= limit - 1e-9);
				assertTrue(MoistAir.dewPointFahrenheit(indoor, limit) <= glazing.insideFahrenheit(indoor, outdoor) + 1e-6);
				before = limit;
			}
		});
	}

	@Test
	void dewPointNeverExceedsTheAirAndComesBackAsTheSameHumidity() {
		Inputs.forMany(4212, in -> {
			double celsius = in.number("celsius", -40, 60);
			double percent = in.number("humidity", 1, 100);
			double dewPoint = MoistAir.dewPointCelsius(celsius, percent);
			assertTrue(dewPoint <= celsius);
			assertEquals(percent, 100 * MoistAir.saturationPascals(dewPoint) / MoistAir.saturationPascals(celsius), percent * 1e-4);
		});
	}

	@Test
	void humidityOfNothingOrMoreThanSaturationIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> MoistAir.dewPointCelsius(20, 0));
		assertThrows(IllegalArgumentException.class, () -> MoistAir.dewPointCelsius(20, 101));
	}

	private static double outdoorWhereWet(WindowGlass glazing, double percent) {
		double outdoor = 60;
		while (WinterHumidity.condensationPercent(70, glazing.insideFahrenheit(70, outdoor)) > percent) {
			outdoor -= 0.1;
		}
		return outdoor;
	}
}
