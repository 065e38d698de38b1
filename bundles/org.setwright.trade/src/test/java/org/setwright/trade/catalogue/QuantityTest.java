package org.setwright.trade.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class QuantityTest {
	@Test
	void readsNumberAndUnitWhateverTheBlanks() {
		assertEquals(Optional.of(new Quantity(1500, Unit.SQUARE_FOOT)), Quantity.parse("  1,500   ft2 ", Dimension.AREA));
		assertEquals(Optional.of(new Quantity(-5.5, Unit.FAHRENHEIT)), Quantity.parse("-5.5°F", Dimension.TEMPERATURE));
		assertEquals(Optional.empty(), Quantity.parse("1,50 ft2", Dimension.AREA));
		assertEquals(Optional.empty(), Quantity.parse("1500", Dimension.AREA));
	}

	@Test
	void withoutADimensionOnlyTheUsualSignOfAUnitWillDo() {
		assertEquals(Optional.of(new Quantity(20, Unit.FAHRENHEIT_DEGREES)), Quantity.parse("20 F°"));
		assertEquals(Optional.of(new Quantity(20, Unit.FAHRENHEIT)), Quantity.parse("20 °F"));
		assertEquals(Optional.empty(), Quantity.parse("20 F"));
		assertEquals(Optional.empty(), Quantity.parse("20"));
	}

	@Test
	void noughtHasNoSign() {
		assertTrue(new Value.Amount(new Quantity(-0.0, Unit.WATT)).same(new Value.Amount(new Quantity(0, Unit.WATT))));
	}

	@Test
	@Timeout(60)
	void aLongRunOfBlanksIsReadInOneGo() {
		assertEquals(Optional.empty(), Quantity.parse("1 a" + " ".repeat(1_000_000) + "b", Dimension.AREA));
	}
}
