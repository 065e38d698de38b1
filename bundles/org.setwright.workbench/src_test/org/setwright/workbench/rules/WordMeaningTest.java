package org.setwright.workbench.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;

class WordMeaningTest {
	private static final String RULE = "when\n\tIndoorUnit( kind == AIR_HANDLER )\n\tOutdoorUnit( kind == AIR_CONDITIONER, stages > 1 )\nthen\n\tpropose( CHANGEOVER_VALVE, 1 );";
	private final WordMeaning meaning = new WordMeaning(Trade.catalogue());

	@Test
	void aFactAndItsFieldSayWhatTheyMean() {
		assertTrue(of("OutdoorUnit").startsWith("outdoor unit\nThe machine with the compressor"), of("OutdoorUnit"));
		assertTrue(of("stages").contains("May be a whole number from 1 to 2."), of("stages"));
	}

	@Test
	void aFieldIsThatOfTheFactItStandsIn() {
		assertTrue(meaning.at(RULE, RULE.lastIndexOf("kind")).orElseThrow().contains("cool only, or pump heat both ways"));
		assertTrue(!meaning.at(RULE, RULE.indexOf("kind")).orElseThrow().contains("cool only, or pump heat both ways"));
	}

	@Test
	void aSettingAndAChoiceSayWhatTheyMean() {
		assertTrue(of("CHANGEOVER_VALVE").startsWith("changeover valve (setting)\n"));
		assertTrue(of("AIR_CONDITIONER").startsWith("air conditioner\n"));
	}

	@Test
	void aPartOfAStartUpSaysWhatItMeansWhereItStandsFirst() {
		String check = "OutdoorUnit( valveEnergisedIn == COOLING )\nthen\n\tstartUp( COOLING, \"{setting FLOOR_LIMIT}\" );";
		assertTrue(meaning.at(check, check.lastIndexOf("COOLING") + 2).orElseThrow().contains("prove that it cools"));
		assertTrue(meaning.at(check, check.indexOf("COOLING") + 2).orElseThrow().contains("terminal O"));
		assertTrue(meaning.at(check, check.indexOf("FLOOR_LIMIT") + 2).orElseThrow().startsWith("floor temperature limit (setting)"));
	}

	@Test
	void otherWordsMeanNothing() {
		assertEquals(Optional.empty(), meaning.at(RULE, RULE.indexOf("then")));
		assertEquals(Optional.empty(), meaning.at("", 0));
	}

	private String of(String word) {
		return meaning.at(RULE, RULE.indexOf(word) + 1).orElseThrow();
	}
}
