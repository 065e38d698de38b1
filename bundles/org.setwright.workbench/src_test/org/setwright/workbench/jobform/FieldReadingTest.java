package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.UnitSystem;

class FieldReadingTest {
	private static final Domain AREA = new Domain.Measure(Unit.SQUARE_FOOT, 100, 10000);

	@Test
	void nothingAndUnknownAreUnknown() {
		assertFalse(FieldReading.of(AREA, UnitSystem.BOTH, " ").answer().orElseThrow().isKnown());
		assertFalse(FieldReading.of(AREA, UnitSystem.BOTH, "Unknown").answer().orElseThrow().isKnown());
	}

	@Test
	void aQuantityKeepsItsUnit() {
		assertEquals("140 m2", FieldReading.written(FieldReading.of(AREA, UnitSystem.BOTH, "140 m2").answer().orElseThrow(), UnitSystem.BOTH));
	}

	@Test
	void aNumberAloneIsMeantInTheUnitBesideTheField() {
		assertEquals("1500 ft2", FieldReading.written(FieldReading.of(AREA, UnitSystem.BOTH, "1500").answer().orElseThrow(), UnitSystem.BOTH));
	}

	@Test
	void aNumberWithAUnitOfSomethingElseIsRefused() {
		FieldReading reading = FieldReading.of(AREA, UnitSystem.BOTH, "1500 kW");
		assertTrue(reading.answer().isEmpty());
		assertTrue(reading.refusal().contains("1500 kW") && reading.refusal().contains("with its unit"), reading.refusal());
	}

	@Test
	void aValueOutOfRangeSaysTheRange() {
		assertTrue(FieldReading.of(AREA, UnitSystem.BOTH, "5 ft2").refusal().contains("from 100 ft2 to 10000 ft2"));
	}

	@Test
	void quantitiesAreShownAndANumberAloneIsMeantInTheUnitsChosen() {
		var area = FieldReading.of(AREA, UnitSystem.SI, "140").answer().orElseThrow();
		assertEquals("140 m2", area.value().orElseThrow().text());
		assertEquals("140 m2", FieldReading.written(area, UnitSystem.BOTH));
		assertEquals("1507 ft2", FieldReading.written(area, UnitSystem.IP));
		assertEquals("", FieldReading.written(org.setwright.trade.catalogue.Answer.unknown(), UnitSystem.IP));
	}
}
