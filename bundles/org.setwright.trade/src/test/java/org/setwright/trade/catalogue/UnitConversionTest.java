package org.setwright.trade.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.setwright.trade.calculation.Inputs;

/**
 * Conversions against an independent units library, each unit put together there from SI units by its definition (NIST
 * SP 811 appendix B, from memory), and against published figures.
 */
class UnitConversionTest {
	private static final javax.measure.Unit<?> FOOT = METRE.multiply(3048).divide(10_000);
	private static final javax.measure.Unit<?> BTU = JOULE.multiply(105_505_585_262L).divide(100_000_000);
	private static final Map<Unit, javax.measure.Unit<?>> DEFINED = new EnumMap<>(Map.ofEntries(
			Map.entry(Unit.KELVIN, KELVIN), Map.entry(Unit.CELSIUS, KELVIN.shift(273.15)),
			Map.entry(Unit.FAHRENHEIT, KELVIN.multiply(5).divide(9).shift(459.67)),
			Map.entry(Unit.CELSIUS_DEGREES, KELVIN), Map.entry(Unit.FAHRENHEIT_DEGREES, KELVIN.multiply(5).divide(9)),
			Map.entry(Unit.WATT, WATT), Map.entry(Unit.KILOWATT, WATT.multiply(1000)),
			Map.entry(Unit.BTU_PER_HOUR, BTU.divide(HOUR)), Map.entry(Unit.KBTU_PER_HOUR, BTU.multiply(1000).divide(HOUR)),
			Map.entry(Unit.TON, BTU.multiply(12_000).divide(HOUR)), Map.entry(Unit.VOLT_AMPERE, VOLT.multiply(AMPERE)),
			Map.entry(Unit.VOLT, VOLT), Map.entry(Unit.AMPERE, AMPERE), Map.entry(Unit.METRE, METRE), Map.entry(Unit.FOOT, FOOT),
			Map.entry(Unit.SQUARE_METRE, SQUARE_METRE), Map.entry(Unit.SQUARE_FOOT, FOOT.pow(2)),
			Map.entry(Unit.LITRE_PER_SECOND, LITRE.divide(SECOND)), Map.entry(Unit.CUBIC_FOOT_PER_MINUTE, FOOT.pow(3).divide(MINUTE)),
			Map.entry(Unit.CUBIC_METRE_PER_HOUR, CUBIC_METRE.divide(HOUR)), Map.entry(Unit.SECOND, SECOND),
			Map.entry(Unit.MINUTE, MINUTE), Map.entry(Unit.HOUR, HOUR), Map.entry(Unit.DAY, DAY), Map.entry(Unit.PERCENT, PERCENT),
			Map.entry(Unit.PER_HOUR, HOUR.inverse())));

	@TestFactory
	Stream<DynamicTest> everyPairOfUnitsAgreesWithAUnitsLibrary() {
		return DEFINED.keySet().stream().flatMap(from -> Unit.measuring(from.dimension()).stream()
				.map(to -> DynamicTest.dynamicTest(from + " to " + to, () -> agrees(from, to))));
	}

	private static void agrees(Unit from, Unit to) throws Exception {
		UnitConverter oracle = DEFINED.get(from).getConverterToAny(DEFINED.get(to));
		Inputs.forMany(4214, in -> {
			double number = in.number("number", -1000, 100_000);
			double expected = oracle.convert(number);
			assertEquals(expected, new Quantity(number, from).in(to), 1e-9 * Math.max(1, Math.abs(expected)));
		});
	}

	@Test
	void onlyPlainNumbersAndWireGaugesHaveNothingToCompareWith() {
		for (Unit unit : Unit.values()) {
			assertTrue(DEFINED.containsKey(unit) || unit == Unit.NONE || unit == Unit.AWG, unit + " is not compared with the library");
		}
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void thereAndBackIsTheSameAmount(Unit unit) {
		Inputs.forMany(4215, in -> {
			Quantity quantity = new Quantity(in.number("number", -500, 50_000), unit);
			for (Unit other : Unit.measuring(unit.dimension())) {
				assertEquals(quantity.number(), quantity.to(other).in(unit), 1e-9 * Math.max(1, Math.abs(quantity.number())));
			}
		});
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void wholeNumbersOfUsualSizeAreTheSameAmountInEveryUnit(Unit unit) {
		int most = (int) Math.min(100_000, unit.fromBase(100_000));
		Inputs.forMany(4217, in -> {
			Quantity quantity = new Quantity(in.whole("number", 0, most), unit);
			for (Unit other : Unit.measuring(unit.dimension())) {
				assertTrue(quantity.sameAmount(quantity.to(other)), quantity + " as " + other);
			}
		});
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void whatIsWrittenIsReadBackAsTheSame(Unit unit) {
		Inputs.forMany(4216, in -> {
			Quantity quantity = new Quantity(in.whole("ten-thousandths", -10_000_000, 100_000_000) / 10_000.0, unit);
			Quantity read = Quantity.parse(quantity.toString(), unit.dimension()).orElseThrow();
			assertEquals(quantity.base(), read.base(), 1e-6, quantity.toString());
		});
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void aLargerNumberIsALargerAmount(Unit unit) {
		assertTrue(unit.toBase(2) > unit.toBase(1));
		assertTrue(unit.fromBase(2) > unit.fromBase(1));
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void whatIsNoNumberStaysNone(Unit unit) {
		assertTrue(Double.isNaN(unit.toBase(Double.NaN)));
		assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.NaN, unit));
		assertThrows(IllegalArgumentException.class, () -> new Quantity(Double.POSITIVE_INFINITY, unit));
	}

	@ParameterizedTest(name = "{0} {1} is {2} {3}")
	@CsvSource({
			"32, FAHRENHEIT, 0, CELSIUS", "-40, FAHRENHEIT, -40, CELSIUS", "47, FAHRENHEIT, 8.33333333, CELSIUS",
			"65, FAHRENHEIT, 18.33333333, CELSIUS", "9, FAHRENHEIT_DEGREES, 5, CELSIUS_DEGREES",
			"1, KILOWATT, 3412.14163, BTU_PER_HOUR", "1, TON, 3.51685284, KILOWATT", "1, TON, 12000, BTU_PER_HOUR",
			"48, KBTU_PER_HOUR, 4, TON", "1, FOOT, 0.3048, METRE", "1, SQUARE_METRE, 10.7639104, SQUARE_FOOT",
			"1, CUBIC_FOOT_PER_MINUTE, 0.47194745, LITRE_PER_SECOND", "1, LITRE_PER_SECOND, 3.6, CUBIC_METRE_PER_HOUR",
			"1, DAY, 24, HOUR" })
	void conversionsArePublishedOnes(double number, Unit from, double expected, Unit to) {
		assertEquals(expected, new Quantity(number, from).in(to), 1e-8 * Math.max(1, Math.abs(expected)) + 5e-9,
				"NIST SP 811 appendix B.8, from memory; 3412 Btu per kWh and 18.33 °C also seen");
	}

	@Test
	void unitsOfDifferentDimensionsDoNotConvert() {
		var refusal = assertThrows(IllegalArgumentException.class, () -> new Quantity(1, Unit.FOOT).in(Unit.MINUTE));
		assertEquals("ft does not convert to min", refusal.getMessage());
	}
}
