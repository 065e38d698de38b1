package org.setwright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The start-up of instructive jobs of the starter book is the accepted one. */
class StarterStartUpTest {
	private static final Path STARTER = Path.of("../../rules/starter").toAbsolutePath().normalize();

	/** A heat pump with elements, dual fuel, steam, a thermopile, a dispute, a phone call, line voltage, everything known. */
	@ParameterizedTest
	@CsvSource({ "demo", "orchard-ave-40", "almond-row-4", "cabin-stove", "dispute-norrvik", "incomplete-heat-pump",
			"cottage-line-voltage", "orchard-rise-nameplate" })
	void isAsAccepted(String job) throws IOException {
		Typed typed = Typed.in(STARTER).type("startup", job);
		assertEquals("", typed.err());
		Golden.check("starter-startup-" + job + ".txt", typed.out());
		assertEquals(0, typed.exit());
	}

	@Test
	void aReversedEntryIsFoundBeforeAnybodyLeaves() {
		String heatPump = Typed.in(STARTER).type("startup", "larch-lane-14").out();
		assertTrue(heatPump.contains("The outdoor coil runs cold"), heatPump);
		assertTrue(!Typed.in(STARTER).type("startup", "mill-street-8").out().contains("outdoor coil runs cold"), "no valve there");
	}

	@Test
	void whileTheValveIsDisputedNeitherCoolingNorHeatingIsStarted() {
		String disputed = Typed.in(STARTER).type("startup", "dispute-norrvik", "--as", "csv").out();
		assertEquals(3, disputed.lines().filter(l -> l.contains(",changeover valve,")).count(), disputed);
	}

	@Test
	void unitsThatDoNotExistAreRefused() {
		assertEquals(2, Typed.in(STARTER).type("startup", "demo", "--units", "furlongs").exit());
	}
}
