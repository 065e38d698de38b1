package org.setwright.trade.calculation.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;

class ControlCircuitTest {
	@ParameterizedTest(name = "AWG {0}: {1} mm, {2} mm2, {3} ohm/km, {4} and {5} ohm/kft")
	@CsvSource({
			"14, 1.6277, 2.0809, 8.286, 2.525, 3.071",
			"16, 1.2908, 1.3087, 13.174, 4.016, 4.884",
			"18, 1.0237, 0.8230, 20.948, 6.385, 7.765",
			"20, 0.8118, 0.5176, 33.309, 10.153, 12.347",
			"22, 0.6438, 0.3255, 52.963, 16.143, 19.633",
			"24, 0.5106, 0.2047, 84.215, 25.669, 31.217" })
	void wireFollowsFromGaugeAndCopper(int gauge, double diameter, double area, double perKm, double perKft, double hot) {
		CopperWire wire = new CopperWire(gauge);
		assertEquals(diameter, wire.diameterMillimetres(), 6e-5, "ASTM B258, from memory; computed");
		assertEquals(area, wire.squareMillimetres(), 6e-5);
		assertEquals(perKm, wire.ohmsPerKilometre(20), 6e-4, "IEC 60028, from memory; computed");
		assertEquals(perKft, wire.ohmsPerThousandFeet(20), 6e-4);
		assertEquals(hot, wire.ohmsPerThousandFeet(75), 6e-4);
	}

	@ParameterizedTest(name = "AWG {0} at {1} °C: {2} ohm/kft, {3}")
	@CsvSource({
			"14, 75, 3.07, 'NFPA 70 chapter 9 table 8, solid uncoated; seen in a secondary copy'",
			"16, 75, 4.89, 'NFPA 70 chapter 9 table 8; seen'", "18, 75, 7.77, 'NFPA 70 chapter 9 table 8; seen'",
			"14, 20, 2.525, 'a cable tester maker''s wire table; seen'", "16, 20, 4.016, 'same; seen'",
			"18, 20, 6.385, 'same; seen'", "20, 20, 10.15, 'same; seen'", "22, 20, 16.14, 'same; seen'" })
	void resistanceAgreesWithPublishedTables(int gauge, double celsius, double published, String source) {
		assertEquals(published, new CopperWire(gauge).ohmsPerThousandFeet(celsius), published * 0.002, source);
	}

	@ParameterizedTest(name = "AWG {0}: {1} ohm/km at 75 °C")
	@CsvSource({ "14, 10.1", "16, 16.0", "18, 25.5" })
	void metricResistanceAgreesWithTheElectricalCode(int gauge, double published) {
		assertEquals(published, new CopperWire(gauge).ohmsPerKilometre(75), published * 0.003, "NFPA 70 chapter 9 table 8, seen");
	}

	@ParameterizedTest(name = "AWG {0}, {1} ft, {2} A at {3} °C: {4} V, {5} %")
	@CsvSource({
			"18, 50, 0.5, 20, 0.319, 1.33", "18, 100, 0.5, 20, 0.639, 2.66", "18, 100, 1.0, 20, 1.277, 5.32",
			"20, 100, 0.5, 20, 1.015, 4.23", "22, 100, 0.5, 20, 1.614, 6.73", "18, 100, 0.5, 75, 0.777, 3.24" })
	void voltageDropCountsBothConductors(int gauge, double feet, double amperes, double celsius, double drop, double percent) {
		double computed = new ControlCable(new CopperWire(gauge), feet, celsius).dropVolts(amperes);
		assertEquals(drop, computed, 1e-3, "computed; the last row with table 8's 7.77 ohm/kft");
		assertEquals(percent, computed / 24 * 100, 1e-2);
	}

	@Test
	void inrushOfACoilCanLeaveTooLittleToPullIn() {
		ControlCable cable = new ControlCable(new CopperWire(22), 150, 20);
		assertEquals(24 - 2 * 0.150 * 16.143 * 40 / 24, cable.voltsAtCoil(24, 40), 1e-3, "computed: Ohm's law");
		assertEquals(0, new ControlCable(new CopperWire(24), 2000, 20).voltsAtCoil(24, 60), "nothing left, never below 0");
	}

	@Test
	void theLongestCableHasJustTheDropAllowed() {
		Inputs.forMany(4208, in -> {
			CopperWire wire = new CopperWire(in.whole("gauge", 14, 24));
			double amperes = in.number("current", 0.2, 5);
			double drop = in.number("drop", 0.1, 4);
			double celsius = in.number("celsius", -20, 75);
			double feet = ControlCable.longestFeet(wire, amperes, drop, celsius);
			if (feet <= 2000) {
				assertEquals(drop, new ControlCable(wire, feet, celsius).dropVolts(amperes), 1e-9);
			}
		});
	}

	@Test
	void thinnerOrWarmerWireLosesMore() {
		Inputs.forMany(4209, in -> {
			int gauge = in.whole("gauge", 10, 29);
			double celsius = in.number("celsius", -50, 149);
			double ohms = new CopperWire(gauge).ohmsPerKilometre(celsius);
			assertTrue(new CopperWire(gauge + 1).ohmsPerKilometre(celsius) > ohms);
			assertTrue(new CopperWire(gauge).ohmsPerKilometre(celsius + 1) > ohms);
		});
	}

	@ParameterizedTest(name = "{0} VA at 24 V: {1} A, {2}")
	@CsvSource({ "100, 4.167, computed", "40, 1.667, seen in a training module", "75, 3.125, computed", "20, 0.833, computed" })
	void fullLoadCurrentFollowsFromTheNameplate(double rating, double amperes, String source) {
		assertEquals(amperes, ControlTransformer.of24Volts(rating).secondaryAmperes(), 5e-4, source);
	}

	@Test
	void theLineSideOfA40VoltAmpereTransformerCarriesAThirdOfAnAmpere() {
		assertEquals(0.333, ControlTransformer.of24Volts(40).primaryAmperes(120), 5e-4, "seen on a trade page");
	}

	@ParameterizedTest(name = "{0}: {1} to {2} A, {3} VA")
	@CsvSource({ "CONTACTOR, 0.3, 0.5, 12", "VALVE, 0.1, 0.3, 7.2", "RELAY, 0.05, 0.1, 2.4" })
	void coilsUsuallyDrawWhatATrainingModuleSays(CoilDraw coil, double least, double most, double voltAmperes) {
		assertEquals(least, coil.leastAmperes(), "indicative range, seen in a parts dealer's training module");
		assertEquals(most, coil.mostAmperes(), "same");
		assertEquals(voltAmperes, coil.mostVoltAmperes(), 1e-9, "computed: upper end at 24 V");
	}

	@Test
	void loadsOverTheNameplateLeaveLessThanNothing() {
		assertEquals(5, ControlTransformer.of24Volts(40).spareVoltAmperes(35));
		assertEquals(-10, ControlTransformer.of24Volts(40).spareVoltAmperes(50));
	}

	@ParameterizedTest(name = "{0} V: nameplate {1} VA, {2} A; into any load {3} A; fuse {4} A")
	@CsvSource({ "24, 100, 4.1667, 41.667, 4.1667", "30, 100, 3.3333, 33.333, 3.3333", "12, 60, 5, 83.333, 5", "20, 100, 5, 50, 5" })
	void class2LimitsAreThoseOfTheElectricalCode(double volts, double rating, double amperes, double any, double fuse) {
		assertEquals(rating, Class2Limit.nameplateVoltAmperes(volts), 1e-9, "NFPA 70 chapter 9 table 11(A): 100 VA seen");
		assertEquals(amperes, Class2Limit.nameplateAmperes(volts), 1e-4, "from memory; computed");
		assertEquals(any, Class2Limit.unlimitedAmperes(volts), 1e-3, "from memory; computed");
		assertEquals(fuse, Class2Limit.overcurrentAmperes(volts), 1e-4, "from memory; computed");
		assertEquals(8.0, Class2Limit.INHERENT_AMPERES, "seen in two secondary copies");
		assertEquals(250, Class2Limit.UNLIMITED_VOLT_AMPERES, "from memory");
	}

	@Test
	void aTransformerOver100VoltAmperesIsNoClass2Source() {
		assertTrue(ControlTransformer.of24Volts(100).keepsClass2());
		assertFalse(ControlTransformer.of24Volts(150).keepsClass2());
	}

	@Test
	void lineVoltageIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new ControlTransformer(40, 120));
		assertThrows(IllegalArgumentException.class, () -> Class2Limit.nameplateVoltAmperes(120));
	}

	@Test
	void aCircuitWithoutCurrentHasNoLongestCable() {
		assertThrows(IllegalArgumentException.class, () -> ControlCable.longestFeet(new CopperWire(18), 0, 1, 20));
	}
}
