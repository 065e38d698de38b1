package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.engine.Books.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.Reason;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;

class SettlingTest {
	private static final Job HEAT_PUMP = Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, maker=Norrvik, stages=1");
	private static final String COOL = rule("cool", "shop practice", "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )",
			"propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");
	private static final String HEAT = rule("heat", "maker's instructions", "OutdoorUnit( maker == \"Norrvik\" )",
			"propose( CHANGEOVER_VALVE, ENERGISED_IN_HEATING );");

	private static SettingOutcome valve(Outcome outcome) {
		return outcome.setting(Trade.catalogue().setting("CHANGEOVER_VALVE").orElseThrow()).orElseThrow();
	}

	@Test
	void strongerAuthoritySettlesAndTheOtherStaysVisible() {
		SettingOutcome valve = valve(Books.edition(COOL + HEAT).run(HEAT_PUMP));
		assertEquals(State.SETTLED, valve.state());
		assertEquals("energised in heating", valve.value().orElseThrow().text());
		assertEquals(List.of("cool"), valve.outranked().stream().map(p -> p.rule().name()).toList());
	}

	@Test
	void orderOfRulesDoesNotMatter() {
		assertEquals(valve(Books.edition(COOL + HEAT).run(HEAT_PUMP)).value(),
				valve(Books.edition(HEAT + COOL).run(HEAT_PUMP)).value());
	}

	@Test
	void withoutAProposalANeededSettingIsAGapAndNoDefault() {
		SettingOutcome valve = valve(Books.edition("").run(HEAT_PUMP));
		assertEquals(State.GAP, valve.state());
		assertTrue(valve.value().isEmpty());
	}

	@Test
	void equalAuthorityAndDifferentValuesAreADispute() {
		SettingOutcome valve = valve(Books.edition(COOL + HEAT.replace("maker's instructions", "shop practice")).run(HEAT_PUMP));
		assertEquals(State.DISPUTED, valve.state());
		assertTrue(valve.value().isEmpty());
		assertEquals(2, valve.deciding().size());
	}

	@Test
	void needIsPerhapsWhenNobodySaidWhetherThereIsAnOutdoorUnit() {
		Outcome outcome = Books.edition(COOL).run(Job.blank());
		assertEquals(State.PERHAPS, valve(outcome).state());
		assertTrue(outcome.toFindOut().stream().anyMatch(t -> t.unknown().label().equals("whether there is an outdoor unit")),
				() -> outcome.toFindOut().toString());
	}

	@Test
	void everySettledSettingNamesTheFactsItRestsOn() {
		Proposal winner = valve(Books.edition(COOL + HEAT).run(HEAT_PUMP)).deciding().get(0);
		Reason.OfFact reason = (Reason.OfFact) winner.firing().reasons().get(0);
		assertEquals(List.of("outdoor unit: maker"), reason.tested().stream().map(t -> t.field().label()).toList());
		assertEquals("The outdoor unit's maker is Norrvik.", reason.sentence());
	}

	@Test
	void findingsLinkReasonsDownToJobFields() {
		Outcome outcome = Books.edition(rule("pump", "shop practice", "OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP )", "find( PUMP_JOB );")
				+ rule("valve", "shop practice", "Finding( name == PUMP_JOB )", "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );"))
				.run(HEAT_PUMP);
		Reason.OfFinding reason = (Reason.OfFinding) valve(outcome).deciding().get(0).firing().reasons().get(0);
		assertEquals("pump", reason.madeBy().get(0).rule().name());
		assertTrue(reason.madeBy().get(0).reasons().get(0) instanceof Reason.OfFact);
		assertEquals("pump job", outcome.findings().get(0).label());
	}

	@Test
	void proposesTheAnswerAnEarlierPatternBound() {
		Outcome outcome = Books.edition(rule("stages", "shop practice", "$u : OutdoorUnit( $s : stages )", "propose( COOL_STAGES, $s );"))
				.run(HEAT_PUMP);
		assertEquals("1", outcome.setting(Trade.catalogue().setting("COOL_STAGES").orElseThrow()).orElseThrow().value()
				.orElseThrow().text());
	}
}
