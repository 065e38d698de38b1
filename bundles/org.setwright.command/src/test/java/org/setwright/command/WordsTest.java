package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.trade.Trade;

class WordsTest {
	@TempDir
	Path folder;

	@Test
	void aloneListsEveryFactAndSettingByBothNames() {
		String all = Typed.in(folder).type("words").out();
		Trade.catalogue().kinds().forEach(k -> assertTrue(all.contains(k.key()) && all.contains(k.name()), k.key()));
		Trade.catalogue().settings().forEach(s -> assertTrue(all.contains(s.label()) && all.contains(s.id()), s.label()));
	}

	@Test
	void aNameInRulesFindsTheSameAsTheLabel() {
		assertEquals(Typed.in(folder).type("words", "changeover", "valve").out(), Typed.in(folder).type("words", "CHANGEOVER_VALVE").out());
	}

	@Test
	void aFactBringsItsAnswersAndTheirValues() {
		String unit = Typed.in(folder).type("words", "outdoor unit").out();
		assertTrue(unit.contains("in rules: valveEnergisedIn"), unit);
		assertTrue(unit.contains("air-source heat pump (AIR_SOURCE_HEAT_PUMP)"), unit);
		assertFalse(unit.contains("in rules: CHANGEOVER_VALVE"), unit);
	}

	@Test
	void fitsTheWidthItIsGiven() {
		for (int columns : new int[] { 80, 100, 120 }) {
			Typed.in(folder).columns(columns).type("words").out().lines()
					.forEach(l -> assertTrue(l.codePointCount(0, l.length()) <= columns, l));
		}
	}
}
