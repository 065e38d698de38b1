package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.landing.HeatPumpTest.landing;
import static org.setwright.landing.Plans.assertPlan;
import static org.setwright.landing.Plans.plan;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.landing.need.Duty;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Warning;
import org.setwright.trade.catalogue.CautionKind;

/** What must stop a plan, what must never be used, and what has to be traced first. */
class TroubleTest {
	private static final String FURNACE = """
			site power: { voltage: 24 V }
			transformers: [heating and cooling]
			outdoor unit: { kind: air conditioner, stages: 1 }
			indoor unit: { kind: furnace, fuel: natural gas, stages: 1 }
			controller: { power: common conductor, separate supplies: no }
			not fitted: everything else
			wires:
			  - { colour: red, at control: R, at equipment: R, condition: sound }
			  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
			  - { colour: green, at control: G, at equipment: G, condition: sound }
			""";
	private static final String WHITE = "  - { colour: white, at control: W, at equipment: W, condition: sound }\n";
	private static final String BLUE = "  - { colour: blue, at control: C, at equipment: C, condition: sound }\n";

	@ParameterizedTest(name = "{0}")
	@CsvSource(delimiter = '|', textBlock = """
			voltage: line voltage      | stop: Line voltage at the
			voltage: maker's data line | stop: The conductors are the
			voltage: unknown           | stop: Nobody has said what
			""")
	void noPlanIsMadeForWhatIsNotKnownToBe24Volts(String power, String stop) {
		LandingPlan plan = plan(FURNACE.replace("voltage: 24 V", power) + WHITE + BLUE);
		assertEquals(stop, Plans.said(plan));
		assertEquals(List.of(), plan.landings());
		assertTrue(plan.cautions().stream().anyMatch(c -> c.kind() == CautionKind.DANGER && c.sentence().contains("prove the conductors dead")));
	}

	@Test
	void noPlanIsMadeAcrossTwoTransformersTiedByTheLink() {
		String both = FURNACE.replace("[heating and cooling]", "[heating, cooling]") + WHITE + BLUE;
		assertEquals("stop: Two transformers and a", Plans.said(plan(both)), "one supply terminal cannot keep two apart");
		assertFalse(Plans.said(plan(both.replace("supplies: no", "supplies: yes"))).contains("stop"), "with the link out they are apart");
	}

	@Test
	void aLinkLeftInAcrossTwoTransformersIsAHardStop() {
		String link = """
				rule "Always in" @authority( code or safety ) @because( "Testing." ) @source( common practice )
				when Controller( ) then propose( SUPPLY_LINK, FITTED ); end
				""";
		var book = new org.setwright.book.Book(Plans.STARTER.folder(), "Test", org.setwright.trade.Trade.catalogue(), List.of(new org.setwright.book.Book.RuleFile("rules/t.drl", link)), List.of(), List.of());
		var edition = org.setwright.engine.Edition.compile(book).edition().orElseThrow();
		String two = FURNACE.replace("[heating and cooling]", "[heating, cooling]").replace("supplies: no", "supplies: yes") + WHITE;
		assertEquals("stop: Two transformers, and the", Plans.said(LandingPlan.of(edition.run(Plans.job(two)))));
		assertFalse(Plans.said(LandingPlan.of(edition.run(Plans.job(FURNACE + WHITE)))).contains("stop"), "one transformer may have the link");
	}

	@Test
	void moreThanThirtyVoltsStopThePlan() {
		String hot = FURNACE.replace("[heating and cooling]", "[ { feeds: heating and cooling, measured voltage: 47 V } ]") + WHITE + BLUE;
		assertEquals("stop: More than 30 V", Plans.said(plan(hot)));
		assertFalse(Plans.said(plan(hot.replace("47 V", "27 V"))).contains("stop"));
	}

	@Test
	void aThermopileTakesItsTwoConductorsAndLeavesTheValveAlone() {
		String cabin = """
				site power: { voltage: millivolt }
				indoor unit: { kind: room heater, fuel: propane, stages: 1 }
				controller: { power: batteries, rated for: 24 V and millivolt, separate supplies: no }
				not fitted: everything else
				wires:
				  - { colour: red, at control: R, at equipment: other, condition: sound }
				  - { colour: white, at control: W, at equipment: other, condition: sound }
				""";
		assertPlan("""
				red: thermopile switch, conductor 1 of 2, wall R, equipment as it is, keep
				white: thermopile switch, conductor 2 of 2, wall W, equipment as it is, keep
				""", cabin);
		assertFalse(landing(plan(cabin.replace("rated for: 24 V and millivolt, ", "")), Duty.SWITCH).isSure(), "whether it is rated has to be found out");
		assertEquals("stop: The heater makes its", Plans.said(plan(cabin.replace("24 V and millivolt", "24 V"))));
		assertTrue(Plans.said(plan(cabin.replace("power: batteries", "power: common conductor"))).contains("stop: The controller needs 24"));
	}

	@ParameterizedTest
	@CsvSource({ "broken", "shorted" })
	void aDamagedConductorIsNeverUsedHoweverShortTheyAre(String condition) {
		LandingPlan plan = plan(FURNACE + BLUE + "  - { colour: white, at control: W, at equipment: W, condition: " + condition + " }\n");
		String said = Plans.said(plan);
		assertTrue(said.contains("never white") && !said.contains("white:"), said);
		assertTrue(plan.unused().get(0).doThis().startsWith("Isolate both its ends"));
	}

	@Test
	void thickConductorsAreLeftAloneUntilMeasured() {
		String said = Plans.said(plan(FURNACE + WHITE + "  - { colour: blue, at control: C, at equipment: C, gauge: 14 AWG, condition: sound }\n"));
		assertTrue(said.contains("never blue\nnone for common"), said);
		assertTrue(Plans.said(plan(FURNACE + WHITE + "  - { colour: blue, at control: C, at equipment: C, gauge: 18 AWG, condition: sound }\n")).contains("blue: common"));
	}

	@Test
	void aSensorPairNeverCarries24VoltsEvenWhenAConductorIsWanting() {
		String said = Plans.said(plan(FURNACE + WHITE + """
				  - { colour: blue, at control: S1, at equipment: S1, condition: sound }
				  - { colour: black, at control: S2, at equipment: S2, condition: sound }
				"""));
		assertTrue(said.contains("never blue\nnever black\nnone for common"), said);
	}

	@Test
	void aConductorOnRAtOneEndAndCAtTheOtherIsLandedNowhere() {
		String said = Plans.said(plan(FURNACE + WHITE + "  - { colour: blue, at control: R, at equipment: C, condition: sound }\n"));
		assertTrue(said.contains("never blue"), said);
	}

	@Test
	void aSensorConductorThatMeets24VoltsAtItsOtherEndIsLandedNowhere() {
		String said = Plans.said(plan(FURNACE + WHITE + "  - { colour: blue, at control: R, at equipment: S1, condition: sound }\noutdoor sensor: { connection: wired }\n"));
		assertTrue(said.contains("never blue") && said.contains("none for outdoor sensor"), said);
	}

	@Test
	void moreConductorsThanAWallHoldsAreStillAnswered() {
		LandingPlan plan = plan(FURNACE + WHITE + BLUE + "  - { colour: pink, at control: not landed, at equipment: not landed }\n".repeat(100));
		assertEquals(105, plan.landings().size() + plan.unused().size());
		assertTrue(plan.toFindOut().stream().anyMatch(c -> c.sentence().startsWith("More conductors")), plan.toFindOut().toString());
		assertEquals(0, plan.unserved().size());
	}

	@Test
	void anUntracedConductorIsLandedOnlyAfterTracing() {
		LandingPlan plan = plan(FURNACE + BLUE + "  - { colour: white, at control: W, condition: sound }\n");
		Landing heat = landing(plan, Duty.HEAT);
		assertEquals("white: first step of heat, wall W, equipment ?>W, keep ?", Plans.said(heat));
		assertEquals("wire 5: at equipment", heat.checks().get(0).unknown().orElseThrow().label());
		assertTrue(landing(plan, Duty.COMMON).isSure(), "the others are not in doubt");
	}

	@Test
	void aConductorNobodyHasRungOutIsConditionalUnlessTheOldControlProvedIt() {
		String unknown = FURNACE + BLUE + "  - { colour: white, at control: W, at equipment: W }\n";
		assertFalse(landing(plan(unknown), Duty.HEAT).isSure());
		assertTrue(landing(plan(unknown + "old control: { worked properly: yes }\n"), Duty.HEAT).isSure());
		assertFalse(landing(plan(unknown + "old control: { worked properly: no }\n"), Duty.HEAT).isSure());
	}

	@Test
	void bothEndsUnknownLeavesOnlyTheColourAndSaysSo() {
		Landing common = landing(plan(FURNACE + WHITE + "  - blue\n"), Duty.COMMON);
		assertEquals("blue: common, wall ?>C, equipment ?>C, new ?", Plans.said(common));
		assertEquals(2, common.checks().size(), "ring it out, and trace it");
	}

	@Test
	void bOnOldEquipmentMayBeTheCommonAndIsTracedFirst() {
		Landing common = landing(plan(FURNACE + WHITE + "  - { colour: blue, at control: C, at equipment: B, condition: sound }\n"), Duty.COMMON);
		assertEquals("blue: common, wall C, equipment B, keep ?", Plans.said(common));
		assertTrue(common.checks().get(0).sentence().startsWith("On some old equipment B is the common"));
	}

	@Test
	void bOnOldEquipmentIsTracedBeforeItServesAnythingElse() {
		String boiler = "site power: { voltage: 24 V }\ntransformers: [heating and cooling]\nindoor unit: { kind: boiler, fuel: oil, stages: 1 }\ncontroller: { power: batteries, separate supplies: no }\n"
				+ "not fitted: everything else\nwires:\n  - { colour: red, at control: R, at equipment: R, condition: sound }\n  - { colour: white, at control: not landed, at equipment: %s, condition: sound }\n";
		assertFalse(landing(plan(boiler.formatted("B")), Duty.HEAT).isSure());
		assertTrue(landing(plan(boiler.formatted("not landed")), Duty.HEAT).isSure());
	}

	@Test
	void xIsTracedBeforeItBecomesTheCommonAndASpareGoesFirst() {
		String x = FURNACE + WHITE + "  - { colour: brown, at control: X, at equipment: X, condition: sound }\n";
		assertEquals("brown: common, wall X>C, equipment X, move ?", Plans.said(landing(plan(x), Duty.COMMON)));
		String spare = x + "  - { colour: purple, at control: not landed, at equipment: not landed, condition: sound }\n";
		assertEquals("purple", landing(plan(spare), Duty.COMMON).conductor().label());
	}

	@Test
	void aConductorWithCrossedEndsIsTracedFromEndToEnd() {
		Landing compressor = landing(plan(FURNACE.replace("at control: Y, at equipment: Y", "at control: Y, at equipment: W") + WHITE + BLUE), Duty.COMPRESSOR);
		assertTrue(compressor.checks().stream().anyMatch(c -> c.sentence().contains("joined, crossed or misread")), compressor.toString());
	}

	@Test
	void aStepCountNobodyKnowsHoldsItsConductorOpen() {
		LandingPlan plan = plan(FURNACE.replace("natural gas, stages: 1", "natural gas") + WHITE + BLUE);
		assertEquals("heating stages", landing(plan, Duty.HEAT).heldOpenBy().get(0).label());
		assertFalse(plan.unserved().stream().anyMatch(u -> u.need().duty() == Duty.HEAT_2), "nothing points to a second step");
	}

	@Test
	void transformersNobodyHasCountedMakeTheSupplyConditional() {
		Landing supply = landing(plan(FURNACE.replace("transformers: [heating and cooling]\n", "").replace("not fitted: everything else\n", "") + WHITE + BLUE), Duty.SUPPLY);
		assertTrue(supply.checks().stream().anyMatch(c -> c.sentence().startsWith("Count the transformers")), supply.checks().toString());
		assertTrue(landing(plan(FURNACE + WHITE + BLUE), Duty.SUPPLY).isSure());
	}

	@Test
	void conductorsNobodyHasListedAreAskedFor() {
		LandingPlan plan = plan(FURNACE.substring(0, FURNACE.indexOf("wires:")).replace("not fitted: everything else\n", ""));
		assertTrue(plan.toFindOut().stream().anyMatch(c -> c.sentence().startsWith("Nobody has listed the conductors")), plan.toFindOut().toString());
		assertEquals(List.of(), plan.landings());
		assertFalse(plan.unserved().isEmpty());
	}

	@Test
	void everyPlanCarriesTheUsualCautions() {
		List<CautionKind> kinds = plan(FURNACE + WHITE + BLUE).cautions().stream().map(Warning::kind).toList();
		assertEquals(List.of(CautionKind.DANGER, CautionKind.LICENSED_WORK, CautionKind.CHECK_AT_START_UP, CautionKind.NOTE), kinds);
	}
}
