package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.engine.Books.rule;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.engine.whynot.WhyNot;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.UnitSystem;

/** What rules want proved at start-up, and in which words it reaches the job. */
class StartUpTest {
	private static final Job HEAT_PUMP = Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, stages=1, minimumOffTime=6 min", "AuxiliaryHeat kind=ELECTRIC_ELEMENTS");
	private static final String ANY = "OutdoorUnit( )";

	private static String check(String name, String when, String phase, String see) {
		return rule(name, "shop practice", when, "startUp( " + phase + ", \"call\", \"" + see + "\", \"stop\" );");
	}

	private static StartUpCheck only(String rules, Job job) {
		List<StartUpCheck> checks = Books.edition(rules).run(job).startUp();
		assertEquals(1, checks.size(), checks::toString);
		return checks.get(0);
	}

	private static String see(String see, String when, Job job) {
		return only(check("a", when, "COOLING", see), job).see().text(UnitSystem.BOTH);
	}

	@Test
	void aCheckSaysWhatToCallForWhatToSeeAndWhatToDoAndNamesItsRule() {
		StartUpCheck check = only(rule("valve", "shop practice", ANY,
				"startUp( COOLING, \"Call for cooling.\", \"Cold air.\", \"The entry is reversed.\", \"Wait {5 min}.\" );"), HEAT_PUMP);
		assertEquals("Call for cooling.|Cold air.|The entry is reversed.|Wait 5 min.", check.callFor().text(UnitSystem.IP) + "|"
				+ check.see().text(UnitSystem.IP) + "|" + check.ifNot().text(UnitSystem.IP) + "|" + check.pause().orElseThrow().text(UnitSystem.IP));
		assertEquals("valve", check.saidBy().get(0).name());
		assertEquals("There is an outdoor unit.", check.firings().get(0).reasons().get(0).sentence());
	}

	@Test
	void aRuleWhoseConditionsDoNotHoldAsksForNothing() {
		assertEquals(List.of(), Books.edition(check("a", "OutdoorUnit( stages == 2 )", "FAN", "x")).run(HEAT_PUMP).startUp());
	}

	@Test
	void checksComeInTheOrderOfAStartUpWhateverTheOrderOfTheRules() {
		String rules = check("out", ANY, "HAND_OVER", "d") + check("heat", ANY, "HEATING", "c") + check("off", ANY, "BEFORE_POWER", "a")
				+ check("cool", ANY, "COOLING", "b");
		assertEquals("abcd", Books.edition(rules).run(HEAT_PUMP).startUp().stream().map(c -> c.see().text(UnitSystem.IP)).collect(Collectors.joining()));
	}

	@Test
	void theSameCheckAskedForTwiceStandsOnceWithBothRules() {
		StartUpCheck check = only(check("a", ANY, "FAN", "x") + check("b", "OutdoorUnit( stages == 1 )", "FAN", "x"), HEAT_PUMP);
		assertEquals(List.of("a", "b"), check.saidBy().stream().map(r -> r.name()).toList());
		assertEquals(2, check.firings().size());
	}

	@Test
	void readingsAreShownWithTheirUnits() {
		assertEquals("rest 6 min", see("rest {$rest}", "OutdoorUnit( $rest : minimumOffTime )", HEAT_PUMP));
		assertEquals("1 step of air-source heat pump", see("{$u.stages} step of {$u.kind}", "$u : OutdoorUnit( )", HEAT_PUMP));
		assertEquals("15 to 20 F° (8.3 to 11.1 C°) colder, 55 °F (12.8 °C) out", see("{15..20 F°} colder, { 55 °F } out", ANY, HEAT_PUMP));
	}

	@Test
	void anUnknownReadingKeepsTheCheckAndSaysWhatToFindOut() {
		StartUpCheck check = only(check("a", "$h : AuxiliaryHeat( )", "SECOND_STAGE", "draws {$h.heatOutput}"), HEAT_PUMP);
		assertTrue(check.certain());
		assertEquals("draws (not known yet: find out auxiliary heat: heat output)", check.see().text(UnitSystem.IP));
		assertEquals(List.of("auxiliary heat: heat output"), check.toFindOut().stream().map(JobField::label).toList());
	}

	@Test
	void anUnknownReadingOfACalculatedFactNamesTheAnswersItIsComputedFrom() {
		String rule = check("a", "$c : ElectricHeatCurrent( )", "SECOND_STAGE", "draws {$c.at240Volts}");
		Job known = Jobs.of("IndoorUnit kind=AIR_HANDLER", "AuxiliaryHeat kind=ELECTRIC_ELEMENTS, heatOutput=9.6 kW");
		assertEquals("draws 40 A", only(rule, known).see().text(UnitSystem.SI), "9.6 kW at 240 V");
		Job unknown = Jobs.of("IndoorUnit kind=AIR_HANDLER", "AuxiliaryHeat kind=ELECTRIC_ELEMENTS");
		assertTrue(only(rule, unknown).toFindOut().stream().map(JobField::label).toList().contains("auxiliary heat: heat output"));
	}

	@Test
	void aCheckThatUnknownsHoldOpenIsListedAsPerhapsNeeded() {
		StartUpCheck check = only(check("a", "OutdoorUnit( $t : lowestOutdoorTemperature )", "CHANGEOVER", "below {$t}"), HEAT_PUMP);
		assertFalse(check.certain());
		assertEquals("below the outdoor unit's lowest outdoor temperature", check.see().text(UnitSystem.IP));
		assertEquals(List.of("outdoor unit: lowest outdoor temperature"), check.heldBy().stream().map(JobField::label).toList());
		assertEquals(List.of(), check.firings());
	}

	@Test
	void aCheckThatIsCertainOneWayIsNotAlsoPerhapsNeeded() {
		assertTrue(only(check("a", ANY, "FAN", "x") + check("b", "Humidifier( )", "FAN", "x"), HEAT_PUMP).certain());
	}

	@Test
	void aNamedSettingShowsWhatItCameTo() {
		String propose = rule("v", "shop practice", ANY, "propose( CHANGEOVER_VALVE, ENERGISED_IN_HEATING );");
		StartUpCheck check = only(propose + check("a", ANY, "COOLING", "valve: {setting CHANGEOVER_VALVE}"), HEAT_PUMP);
		assertEquals("valve: energised in heating", check.see().text(UnitSystem.IP));
		assertEquals(List.of(), check.undecided());
	}

	@Test
	void aNamedSettingNobodyDecidedSaysNotToStart() {
		String check = check("a", ANY, "COOLING", "valve: {setting CHANGEOVER_VALVE}");
		assertEquals("valve: A GAP (no rule gives it), so do not start this", only(check, HEAT_PUMP).see().text(UnitSystem.IP));
		String dispute = rule("h", "shop practice", ANY, "propose( CHANGEOVER_VALVE, ENERGISED_IN_HEATING );")
				+ rule("c", "shop practice", ANY, "propose( CHANGEOVER_VALVE, ENERGISED_IN_COOLING );");
		StartUpCheck disputed = only(dispute + check, HEAT_PUMP);
		assertEquals("valve: DISPUTED (energised in heating or energised in cooling), so do not start this",
				disputed.see().text(UnitSystem.IP));
		assertEquals(List.of("CHANGEOVER_VALVE"), disputed.undecided().stream().map(s -> s.id()).toList());
	}

	@Test
	void aNamedSettingTheJobDoesNotNeedSaysSo() {
		assertEquals("not needed here", see("{setting FLOOR_LIMIT}", ANY, Jobs.of("OutdoorUnit kind=AIR_CONDITIONER", "FloorSensor none")));
	}

	@Test
	void whyNotAnswersForRulesThatOnlyCheck() {
		Edition edition = Books.edition(check("a", "OutdoorUnit( stages == 2 )", "FAN", "x"));
		WhyNot why = edition.about(HEAT_PUMP).whyNot(edition.rules().get(0));
		assertEquals(WhyNot.Status.SILENT, why.status());
		assertEquals(1, why.blockers().size());
	}
}
