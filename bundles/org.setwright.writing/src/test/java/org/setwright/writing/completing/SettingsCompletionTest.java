package org.setwright.writing.completing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.Trade;

class SettingsCompletionTest {
	private static List<String> words(String text) {
		String typed = text.replace("\\n", "\n");
		return new SettingsCompletion(Trade.catalogue()).at(typed.replace("|", ""), typed.indexOf('|')).offers().stream().map(Offer::word).toList();
	}

	@ParameterizedTest
	@CsvSource(delimiter = ';', value = { "se|; settings: ", "settings:\\n  - se|; setting: ", "settings:\\n  - setting: a\\n    mea|; meaning: ",
			"settings:\\n  - setting: a\\n    group: humi|; humidity", "settings:\\n  - setting: a\\n    values: yes|; yes or no",
			"settings:\\n  - setting: a\\n    needed: Humidif|; Humidifier( )", "settings:\\n  - { setting: a, needed: alw|; always" })
	void whatHasBeenBegunIsCompleted(String text, String word) {
		assertEquals(List.of(word.stripTrailing()), words(text).stream().map(String::stripTrailing).toList());
	}

	@Test
	void aNameAndAMeaningAreForThePersonToWrite() {
		assertEquals(List.of(), words("settings:\\n  - setting: |"));
		assertEquals(List.of(), words("settings:\\n  - setting: a\\n    meaning: |"));
	}
}
