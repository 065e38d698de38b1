package org.setwright.trade.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitSystemTest {

	/** Conversions by hand: 55 °F is (55 - 32) / 1.8 = 12.8 °C, 400 cfm 188.8 L/s, 10 kW 34.12 kBtu/h, 1 ft 0.3048 m. */
	@ParameterizedTest(name = "{0}")
	@CsvSource(delimiter = '|', textBlock = """
			55 °F        | 55 °F       | 12.8 °C   | 55 °F (12.8 °C)
			13 °C        | 55.4 °F     | 13 °C     | 13 °C (55.4 °F)
			-8 °F        | -8 °F       | -22.2 °C  | -8 °F (-22.2 °C)
			20 F°        | 20 F°       | 11.1 C°   | 20 F° (11.1 C°)
			400 cfm      | 400 cfm     | 189 L/s   | 400 cfm (189 L/s)
			10 kW        | 34.1 kBtu/h | 10 kW     | 10 kW (34.1 kBtu/h)
			0.5 ft       | 0.5 ft      | 0.15 m    | 0.5 ft (0.15 m)
			24 V         | 24 V        | 24 V      | 24 V
			41.667 A     | 41.7 A      | 41.7 A    | 41.7 A
			1.25 A       | 1.25 A      | 1.25 A    | 1.25 A
			5 min        | 5 min       | 5 min     | 5 min
			12345 Btu/h  | 12345 Btu/h | 3.6 kW    | 12345 Btu/h (3.6 kW)
			50%          | 50%         | 50%       | 50%
			""")
	void showsAQuantityInTheUnitsAsked(String written, String ip, String si, String both) {
		Quantity quantity = Quantity.parse(written).orElseThrow();
		assertEquals(ip, UnitSystem.IP.text(quantity));
		assertEquals(si, UnitSystem.SI.text(quantity));
		assertEquals(both, UnitSystem.BOTH.text(quantity));
	}

	@Test
	void aRangeNamesItsUnitOnce() {
		Quantity least = new Quantity(15, Unit.FAHRENHEIT_DEGREES);
		assertEquals("15 to 20 F° (8.3 to 11.1 C°)", UnitSystem.BOTH.text(least, new Quantity(20, Unit.FAHRENHEIT_DEGREES)));
		assertEquals("15 F°", UnitSystem.IP.text(least, least));
	}

	@Test
	void aUnitHasItsCounterpart() {
		assertEquals(Unit.CELSIUS, UnitSystem.SI.unit(Unit.FAHRENHEIT));
		assertEquals(Unit.KBTU_PER_HOUR, UnitSystem.IP.unit(Unit.KILOWATT));
		assertEquals(Unit.KILOWATT, UnitSystem.SI.unit(Unit.KILOWATT));
		assertEquals(Unit.VOLT, UnitSystem.SI.unit(Unit.VOLT));
		assertEquals(Unit.FOOT, UnitSystem.BOTH.unit(Unit.FOOT));
	}
}
