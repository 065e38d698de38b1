package org.setwright.workbench.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.workbench.rules.Completions.Completion;

class CompletionsTest {
	private static final String HEAD = "rule \"a\"\n\t@authority( shop practice )\nwhen\n\t";
	private final Completions completions = new Completions(Trade.catalogue(), () -> List.of("DUAL_FUEL_JOB", "HEAT_PUMP_JOB"));

	@Test
	void aConditionBeginsWithAFact() {
		assertEquals(List.of("OutdoorUnit", "OutdoorSensor"), sorted(words(HEAD + "Outd"), "OutdoorUnit", "OutdoorSensor"));
		assertTrue(words(HEAD).containsAll(List.of("not", "exists", "Finding", "Wire")));
	}

	@Test
	void insideAFactItsFieldsAreOffered() {
		assertEquals(List.of("valveEnergisedIn", "valveFoundEnergisedIn"), words(HEAD + "OutdoorUnit( kind == AIR_CONDITIONER, valve"));
		assertFalse(words(HEAD + "OutdoorUnit( ").contains("fuel"));
	}

	@Test
	void afterAComparisonTheFieldsValuesAreOffered() {
		assertEquals(List.of("AIR_CONDITIONER", "AIR_SOURCE_HEAT_PUMP"), words(HEAD + "OutdoorUnit( kind == AIR"));
		assertTrue(words(HEAD + "OutdoorUnit( kind in ( AIR_CONDITIONER, ").contains("GROUND_SOURCE_HEAT_PUMP"));
		assertEquals(List.of("1", "2", "UNKNOWN"), words(HEAD + "OutdoorUnit( stages == "));
		assertEquals(List.of("YES", "NO", "UNKNOWN"), words(HEAD + "OutdoorUnit( variableSpeed == "));
	}

	@Test
	void theBooksFindingsAreOfferedWhereOneIsAskedForOrMade() {
		assertEquals(List.of("DUAL_FUEL_JOB"), words(HEAD + "Finding( name == D"));
		assertEquals(List.of("DUAL_FUEL_JOB", "HEAT_PUMP_JOB"), words(HEAD + "OutdoorUnit( )\nthen\n\tfind( "));
	}

	@Test
	void afterAClosedPatternANewConditionBegins() {
		assertTrue(words(HEAD + "OutdoorUnit( kind == AIR_CONDITIONER )\n\t").contains("IndoorUnit"));
	}

	@Test
	void anOutcomeProposesASettingAndOneOfItsValues() {
		String then = HEAD + "OutdoorUnit( )\nthen\n\t";
		assertEquals(List.of("propose", "find", "caution", "startUp"), words(then));
		assertEquals(List.of("CHANGEOVER_VALVE"), words(then + "propose( CHANGEOVER"));
		assertEquals(List.of("ENERGISED_IN_COOLING", "ENERGISED_IN_HEATING"), words(then + "propose( CHANGEOVER_VALVE, "));
		assertTrue(words(then + "caution( ").contains("LICENSED_WORK"));
		assertEquals(List.of("SECOND_STAGE", "SAFETY_DEVICES"), sorted(words(then + "startUp( S"), "SECOND_STAGE", "SAFETY_DEVICES"));
		assertEquals(List.of("CHANGEOVER_VALVE"), words(then + "startUp( COOLING, \"It is {setting CHANGEOVER"));
	}

	@Test
	void whatPeopleCallItFindsItToo() {
		assertEquals(List.of("CHANGEOVER_VALVE"), words(HEAD + "OutdoorUnit( )\nthen\n\tpropose( changeover"));
	}

	@Test
	void anAuthorityIsOneOfFive() {
		assertEquals(5, words("rule \"a\"\n\t@authority( ").size());
		assertEquals(List.of("authority", "because", "source"), words("rule \"a\"\n\t@"));
	}

	@Test
	void whatIsOfferedSaysWhatItMeans() {
		Completion valve = completions.at(HEAD + "OutdoorUnit( )\nthen\n\tpropose( CHANGEOVER", (HEAD + "OutdoorUnit( )\nthen\n\tpropose( CHANGEOVER").length()).get(0);
		assertEquals("changeover valve", valve.label());
		assertFalse(valve.meaning().isEmpty());
	}

	@Test
	void everyWordThatIsOfferedSaysWhatItMeansButTheFindingsOfTheBookWhichSayWhereTheyAreUsed() {
		String then = HEAD + "OutdoorUnit( )\nthen\n\t";
		for (String before : List.of("", "rule \"a\"\n\t@", "rule \"a\"\n\t@authority( ", HEAD, HEAD + "OutdoorUnit( ", HEAD + "OutdoorUnit( stages == ",
				HEAD + "OutdoorUnit( variableSpeed == ", HEAD + "OutdoorUnit( kind == ", then, then + "propose( ", then + "propose( COOL_STAGES, ",
				then + "propose( CHANGEOVER_VALVE, ", then + "caution( ", then + "startUp( ")) {
			List<Completion> offered = completions.at(before, before.length());
			assertFalse(offered.isEmpty(), before);
			assertEquals(List.of(), offered.stream().filter(c -> c.meaning().isBlank()).map(Completion::word).toList(), before);
		}
		assertEquals("", completions.at(then + "find( ", (then + "find( ").length()).get(0).meaning());
	}

	private List<String> words(String before) {
		return completions.at(before, before.length()).stream().map(Completion::word).toList();
	}

	private static List<String> sorted(List<String> words, String... order) {
		return List.of(order).stream().filter(words::contains).toList();
	}
}
