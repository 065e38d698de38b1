package org.setwright.command.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class PageTest {
	private static Page page(boolean colour, boolean accents) {
		PrintStream nowhere = new PrintStream(new ByteArrayOutputStream());
		return new Page(new Surroundings(nowhere, nowhere, Trade.catalogue(), Path.of(""), Path.of(""), Path.of("log"), "setwright", 60, colour, accents));
	}

	@Test
	void controlCharactersInABookCannotSteerTheTerminal() {
		String shown = page(false, true).line(0, Style.PLAIN, "red\u001b[31m and back\u009b2J and \u202eturned").toString();
		assertEquals("red?[31m and back?2J and ?turned\n", shown);
	}

	@Test
	void unitsAndAccentsHaveASpellingInAscii() {
		assertEquals("-20 degC, 5 F, 24 m2, Cafe Eclair, \"so\" ?\n",
				page(false, false).line(0, Style.PLAIN, "-20 °C, 5 F°, 24 m², Café Éclair, “so” 漢").toString());
	}

	@Test
	void aWordLongerThanTheLineIsBroken() {
		page(false, true).line(4, Style.PLAIN, "x".repeat(150)).toString().lines().forEach(l -> assertFalse(l.length() > 60, l));
	}

	@Test
	void cellsWrapInTheirColumn() {
		assertEquals("""
				  one two   short
				  three     red
				""", page(false, true).row(2, new Cell(8, Style.PLAIN, "one two three"), new Cell(6, Style.PLAIN, "short red")).toString());
	}

	@Test
	void freeLinesNeitherPileUpNorEndThePage() {
		assertEquals("a\n\nb\n", page(false, true).blank().line(0, Style.PLAIN, "a").blank().blank().line(0, Style.PLAIN, "b").blank().toString());
	}

	@Test
	void colourStandsAroundTheWordsAndNotTheGaps() {
		assertEquals("\u001b[1mab\u001b[0m        \u001b[2mcd\u001b[0m\n",
				page(true, true).row(0, new Cell(8, Style.STRONG, "ab"), Cell.rest(Style.QUIET, "cd")).toString());
	}
}
