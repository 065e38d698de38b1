package org.setwright.workbench;

import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class CatalogueTest {
	@Test
	void theCatalogueIsOnThePathOfTheWindow() {
		assertFalse(Trade.catalogue().settings().isEmpty());
	}
}
