package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class ExpectingTest {
	@Test
	void everythingOfferedIsUnderstood() {
		Trade.catalogue().settings().forEach(setting -> Expecting.offered(setting)
				.forEach(text -> assertEquals(text, Expecting.read(setting, text).orElseThrow().text(), setting.label())));
	}

	@Test
	void anythingElseIsNot() {
		Trade.catalogue().settings().forEach(setting -> assertTrue(Expecting.read(setting, "whatever you like").isEmpty(), setting.label()));
	}
}
