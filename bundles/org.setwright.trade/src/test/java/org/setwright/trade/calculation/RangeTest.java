package org.setwright.trade.calculation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTest {
	@ParameterizedTest
	@ValueSource(doubles = { -80, 0, 140 })
	void bothEndsAreAllowed(double fahrenheit) {
		assertEquals(fahrenheit, Range.OUTDOOR_FAHRENHEIT.check(fahrenheit));
	}

	@ParameterizedTest
	@ValueSource(doubles = { -80.1, 140.1, Double.NaN, Double.POSITIVE_INFINITY })
	void whatIsOutsideOrNoNumberIsRefused(double fahrenheit) {
		assertThrows(IllegalArgumentException.class, () -> Range.OUTDOOR_FAHRENHEIT.check(fahrenheit));
	}

	@Test
	void theRefusalNamesInputLimitsAndValue() {
		var refusal = assertThrows(IllegalArgumentException.class,
				() -> new Range("cable length", 0, 2000, "ft").check(2000.5));
		assertEquals("cable length must be from 0 ft to 2000 ft, not 2000.5 ft", refusal.getMessage());
	}
}
