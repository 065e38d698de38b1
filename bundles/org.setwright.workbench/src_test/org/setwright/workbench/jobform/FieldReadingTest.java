package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Unit;

class FieldReadingTest {
	private static final Domain AREA = new Domain.Measure(Unit.SQUARE_FOOT, 100, 10000);

	@Test
	void nothingAndUnknownAreUnknown() {
		assertFalse(FieldReading.of(AREA, " ").answer().orElseThrow().isKnown());
		assertFalse(FieldReading.of(AREA, "Unknown").answer().orElseThrow().isKnown());
	}

	@Test
	void aQuantityKeepsItsUnit() {
		assertEquals("140 m2", FieldReading.written(FieldReading.of(AREA, "140 m2").answer().orElseThrow()));
	}

	@Test
	void aNumberAloneIsMeantInTheUnitBesideTheField() {
		assertEquals("1500 ft2", FieldReading.written(FieldReading.of(AREA, "1500").answer().orElseThrow()));
	}

	@Test
	void aNumberWithAUnitOfSomethingElseIsRefused() {
		FieldReading reading = FieldReading.of(AREA, "1500 kW");
		assertTrue(reading.answer().isEmpty());
		assertTrue(reading.refusal().contains("1500 kW") && reading.refusal().contains("with its unit"), reading.refusal());
	}

	@Test
	void aValueOutOfRangeSaysTheRange() {
		assertTrue(FieldReading.of(AREA, "5 ft2").refusal().contains("from 100 ft2 to 10000 ft2"));
	}
}
