package org.setwright.writing.completing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.writing.Desk;
import org.setwright.writing.completing.Offer.Offered;

/** A bar stands for the cursor. */
class JobCompletionTest {
	private static final String SETTINGS = "settings:\n  - setting: misting\n    meaning: Wets the coil.\n    values: [off, once a day]\n";
	private static final Desk DESK = Desk.with(rule("Find it", "OutdoorUnit( )", "find( TWO_STEP );")).and("settings.yaml", SETTINGS);

	private static Offered offered(String text) {
		String typed = text.replace("\\n", "\n");
		return new JobCompletion(DESK.manuscript()).at(typed.replace("|", ""), typed.indexOf('|'));
	}

	private static List<String> words(String text) {
		return offered(text).offers().stream().map(Offer::word).toList();
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = {
			"hum|; humidifier: ",
			"job: A\\nexp|; expect: ",
			"job: A\\noutdoor unit: { ki|; kind: ",
			"job: A\\noutdoor unit: { kind: air-source heat pump, sta|; stages: ",
			"job: A\\noutdoor unit: { kind: air-s|; air-source heat pump",
			"job: A\\noutdoor unit:\\n  kind: air-s|; air-source heat pump",
			"job: A\\noutdoor unit:\\n  stages: 2\\n  ki|; kind: ",
			"job: A\\nwires:\\n  - { col|; colour: ",
			"job: A\\nwires:\\n  - colour: red\\n    at c|; at control: ",
			"job: A\\nhumidifier: no|; none",
			"job: A\\nhumidifier: fit|; fitted",
			"job: A\\nnot fitted: [humidifier, zone|; zone panel",
			"job: A\\nnot fitted:\\n  - every|; everything else",
			"expect:\\n  winter hum|; winter humidity limit: ",
			"expect:\\n  humidifier runs: with h|; with heat",
			"expect:\\n  humidifier runs: { is: with h|; with heat",
			"expect:\\n  humidifier runs: { is: with heat, b|; by: ",
			"expect:\\n  humidifier runs: { by: Fi|; Find it",
			"expect:\\n  winter humidity limit: ga|; gap",
			"expect:\\n  misting: once|; once a day",
			"expect:\\n  findings: [two|; two step",
			"expect:\\n  no cautions:\\n    - any o|; any other",
			"expect:\\n  start-up:\\n    - cool|; cooling" })
	void whatHasBeenBegunIsCompleted(String text, String word) {
		assertEquals(List.of(word.stripTrailing()), words(text).stream().map(String::stripTrailing).toList());
	}

	@Test
	void whatIsOfferedTakesThePlaceOfWhatHasBeenTyped() {
		assertEquals("outdoor unit: { ".length(), offered("outdoor unit: { ki|").start());
		assertEquals("outdoor unit: { kind: ".length(), offered("outdoor unit: { kind:   |").start() - 2);
	}

	@Test
	void everyOfferSaysWhatItMeansWhereTheCatalogueDoes() {
		assertTrue(offered("job: A\n|").offers().stream().anyMatch(o -> o.word().equals("humidifier: ") && o.meaning().contains("moisture")));
		assertTrue(offered("building: { floor ar|").offers().get(0).meaning().contains("ft2"));
		assertTrue(offered("building: { floor area: |").offers().get(0).meaning().contains("ft2"));
	}

	@ParameterizedTest
	@CsvSource({ "job: A # hum|", "notes: |", "job: \"hum|", "job: A\\nzeppelin: { ki|" })
	void inCommentsNotesAndQuotesNothingIsOffered(String text) {
		assertEquals(List.of(), words(text));
	}

	@Test
	void whatIsStillMissingBehindTheCursorDoesNotMatter() {
		assertEquals(List.of("kind: "), words("outdoor unit: { ki|\nindoor unit: { kind: furnace }\n"));
		assertFalse(words("job: A\n|\nindoor unit: none\n").isEmpty());
	}
}
