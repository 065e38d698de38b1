package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that state or change a fact. */
class FactLinesTest {
	private final Session bench = Sample.bench();

	@Test
	void aLineThatChangesAFactShowsOnlyWhatChanged() {
		assertEquals("""
				STOP: Mind the heat.
				  says "The alarm" (shop practice)
				speed: 2 (was 1)
				  says "By size" (shop practice)
				alarm: 62 °F (was a gap)
				  says "The alarm" (shop practice)
				found: big
				  says "The alarm" (shop practice)
				start-up, fan: Let it turn. See: It hums.
				  says "A big one is started slowly"
				NOT AS EXPECTED: speed expected 1, came to 2""", Sample.told(bench, "pump size: 2"));
	}

	@Test
	void whatGoesIsToldToo() {
		String told = Sample.told(Sample.after(bench, "pump size: 2"), "pump size: unknown");
		assertTrue(told.startsWith("no longer raised: stop: Mind the heat.\nspeed: GAP: needed, and no rule gives a value (was 2)"), told);
		assertTrue(told.contains("no longer found: big") && told.contains("start-up, fan, now reads: perhaps needed: Let it turn.")
				&& told.contains("now to find out: pump: size"), told);
	}

	@Test
	void aLineThatSaysWhatIsSoAlreadyChangesNothing() {
		assertEquals("The job says so already.", Sample.told(bench, "pump size: 1"));
		assertEquals(0, Sample.after(bench, "pump size: 1").changes().size());
		assertEquals("Nothing else changes.", Sample.told(bench, "yard gates: 2"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "pump size: 2 | pump size | 2", "size: 2 | pump size | 2", "PUMP Size : 2 | pump size | 2",
			"pump: { size: 2, lift: 3 m } | pump lift | 3 m",
			"pump: size: 2, lift: 3 m | pump lift | 3 m", "pump lift: unknown | pump lift | unknown", "hose 1 paint: blue | hose 1 paint | blue",
			"hose paint: blue | hose 1 paint | blue", "hose 2 paint: blue | hoses + 0 | 2", "hoses: add blue | hose 2 paint | blue",
			"hoses: add { paint: blue, length: 2 m } | hose 2 length | 2 m", "hoses: add | hoses + 0 | 2", "hoses: [red, blue, red] | hoses + 0 | 3",
			"hose 1: { length: 2 m } | hose 1 length | 2 m", "lamp lit: yes | lamp lit | yes" })
	void everyWayOfStatingAFactIsUnderstood(String line, String ask, String expected) {
		String told = Sample.told(Sample.after(bench, line), ask).lines().findFirst().orElse("");
		assertEquals(expected, told.substring(told.lastIndexOf(": ") < 0 ? 0 : told.lastIndexOf(": ") + 2));
	}

	@Test
	void aKindMayBeThereOrNotOrUnknown() {
		assertEquals("lamp: none\n  Shines.", Sample.told(bench, "lamp"));
		assertEquals("lamp: unknown\n  Shines.", Sample.told(Sample.after(bench, "lamp: unknown"), "lamp"));
		assertTrue(Sample.told(bench, "lamp: fitted").startsWith("colour of light: GAP"));
		assertEquals("pump: none\n  Moves water.", Sample.told(Sample.after(bench, "not fitted: lamp, pump"), "pump"));
	}

	@Test
	void oneOfSeveralCanBeTakenOut() {
		Session two = Sample.after(bench, "hoses: add blue");
		assertEquals("1", Sample.told(Sample.after(two, "hoses: take out 1"), "hoses + 0"));
		assertEquals("hose 1: paint: blue\n  How it is painted.", Sample.told(Sample.after(two, "hoses: take out 1"), "hose 1 paint"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "pump size: 12 | 1:12 \"12\" is out of bounds for size. Write a whole number from 0 to 9.",
			"pump sise: 2 | 1:6 There is no \"sise\" of the pump. Is \"size\" meant?",
					"pomp size: 2 | 1:1 There is no fact called \"pomp size\". Is \"pump size\" meant?",
			"pump lift: 3 | 1:12 The unit of lift is missing after 3. Write a number with its unit (m or ft) from 0 ft to 900 ft.",
			"pump size: | 1:11 Nothing is said after the colon. Write a value, or \"unknown\".",
			"yard: none | 1:7 Every job has a yard, so there cannot be none. Write \"unknown\", or what is known.",
			"reach distance: 3 ft | 1:1 This is worked out (twice the lift), never stated. State what it is worked out from, or ask for it without a colon.",
			"hose 4 paint: red | 1:1 There is no hose 4. The last is 1; write 2 for one more.",
			"hoses: take out 1 | 1:17 It is the only one, so taking it out would not say whether there are any. Write \"hoses: none\".",
			"hoses: take out 3 | 1:17 There is no hose 3. Write a number from 1 to 1.",
			"hoses: add { paint: red, lenght: 2 m } | 1:26 There is no \"lenght\" of the hose. Is \"length\" meant?",
			"hoses: red | 1:8 \"red\" does not say which answer about the hose it is. Write \"hoses: add red\" for one more, or say which, such as \"hose 1 paint: ...\".",
			"pump: 3 | 1:7 \"3\" does not say which answer about the pump it is. Write the name of the answer too, for example \"pump size: 3\"." })
	void aSlipIsShownInTheLineWithARemedy(String line, String expected) {
		assertEquals(expected, Sample.misread(bench, line));
	}

	@Test
	void whichOfSeveralHasToBeSaid() {
		assertEquals("1:1 The job has 2 hoses, and it is not said which is meant. Write its number, for example \"hose 1\".",
				Sample.misread(Sample.after(bench, "hoses: add blue"), "hose paint: red"));
	}
}
