package org.setwright.writing.completing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.Trade;
import org.setwright.writing.completing.Offer.Offered;

class TableCompletionTest {
	private static final String HEAD = "outdoor unit kind,=> changeover valve,authority,source\n";

	private static Offered offered(String text) {
		return new TableCompletion(Trade.catalogue()).at(text.replace("|", ""), text.indexOf('|'));
	}

	private static List<String> words(String text) {
		return offered(text).offers().stream().map(Offer::word).toList();
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = { "outdoor unit ma|; outdoor unit maker", "outdoor unit maker, => change|; => changeover valve", "outdoor unit maker,auth|; authority" })
	void headingsAreFactsSettingsAndTheRest(String text, String word) {
		assertEquals(List.of(word), words(text));
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = { "air-s|; air-source heat pump", "air-source heat pump,energised in h|; energised in heating",
			"\"air-source heat pump\", energised in heating, maker|; maker's instructions", "x,y,z,comm|; common practice" })
	void cellsAreWhatTheirHeadingAllows(String row, String word) {
		assertEquals(List.of(word), words(HEAD + "# a remark\n" + row + "\nground-source heat pump,,,\n"));
	}

	@Test
	void eachSaysWhatItMeans() {
		assertTrue(offered(HEAD + "|").offers().get(0).meaning().contains("Empty: any answer."));
	}

	@Test
	void remarksAreLeftAlone() {
		assertEquals(List.of(), words(HEAD + "# air|\n"));
	}
}
