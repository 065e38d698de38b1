package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.landing.Plans.assertPlan;
import static org.setwright.landing.Plans.plan;

import org.junit.jupiter.api.Test;
import org.setwright.landing.need.Duty;
import org.setwright.landing.plan.Landing;

/** Heat pumps, each plan worked out by hand from the trade. */
class HeatPumpTest {
	private static final String ONE = """
			site power: { voltage: 24 V, common at the wall: yes }
			transformers: [heating and cooling]
			controller: { heat stages: 4, cool stages: 2, runs heat pumps: yes, power: common conductor, separate supplies: no }
			not fitted: everything else
			""";
	private static final String ELEMENTS = """
			indoor unit: { kind: air handler, fuel: electric, stages: 1 }
			auxiliary heat: { kind: electric elements, stages: 1 }
			""";
	private static final String COOLING_PUMP = "outdoor unit: { kind: air-source heat pump, stages: 1, valve energised in: cooling }\n";
	private static final String HEATING_PUMP = "outdoor unit: { kind: air-source heat pump, stages: 1, valve energised in: heating }\n";
	private static final String SEVEN = """
			wires:
			  - { colour: red, at control: R, at equipment: R, condition: sound }
			  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
			  - { colour: green, at control: G, at equipment: G, condition: sound }
			  - { colour: white, at control: W, at equipment: W, condition: sound }
			  - { colour: blue, at control: C, at equipment: C, condition: sound }
			""";

	@Test
	void aValvePoweredInCoolingIsLandedOnO() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				yellow: compressor, wall Y, equipment Y, keep
				orange: changeover valve, wall O, equipment O, keep
				green: indoor fan, wall G, equipment G, keep
				white: auxiliary heat, wall W>Aux, equipment W, keep
				blue: common, wall C, equipment C, keep
				""", ONE + COOLING_PUMP + ELEMENTS + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n");
	}

	@Test
	void aValvePoweredInHeatingIsLandedOnB() {
		String said = Plans.said(plan(ONE + HEATING_PUMP + ELEMENTS + SEVEN + "  - { colour: orange, at control: B, at equipment: B, condition: sound }\n"));
		assertTrue(said.contains("orange: changeover valve, wall B, equipment B, keep\n"), said);
	}

	@Test
	void anEquipmentTerminalThatSaysTheOppositeOfTheSetUpIsNotTrusted() {
		LandingPlan plan = plan(ONE + HEATING_PUMP + ELEMENTS + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n");
		Landing valve = landing(plan, Duty.CHANGEOVER);
		assertEquals("orange: changeover valve, wall O>B, equipment O, keep ?", Plans.said(valve));
		assertTrue(valve.checks().get(0).sentence().contains("says the opposite of the set-up"), valve.checks().toString());
	}

	@Test
	void aValveNobodyHasSettledIsHeldOpenByTheSetting() {
		LandingPlan plan = plan(ONE + """
				outdoor unit: { kind: air-source heat pump, stages: 1, valve energised in: cooling, maker: Norrvik }
				""" + ELEMENTS + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n");
		Landing valve = landing(plan, Duty.CHANGEOVER);
		assertEquals("changeover valve", valve.heldOpenBy().get(0).label());
		assertEquals("orange: changeover valve, wall O>O/B, equipment O, keep ?", Plans.said(valve));
	}

	@Test
	void aHeatPumpAloneHasNoUseForTheWhiteConductor() {
		String said = Plans.said(plan(ONE + COOLING_PUMP + """
				indoor unit: { kind: air handler, fuel: none }
				""" + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n"));
		assertTrue(said.endsWith("cap white"), said);
	}

	@Test
	void dualFuelLandsTheFurnaceOnTheAuxiliaryOutput() {
		String said = Plans.said(plan(ONE + COOLING_PUMP + """
				indoor unit: { kind: furnace, fuel: natural gas, stages: 1, fan run by: equipment }
				auxiliary heat: { kind: furnace, stages: 1 }
				""" + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n"));
		assertTrue(said.contains("white: auxiliary heat, wall W>Aux, equipment W, keep"), said);
	}

	@Test
	void aBlueConductorOnBBesideAHeatPumpIsTheValveAndNotTheCommon() {
		String said = Plans.said(plan(ONE + HEATING_PUMP + ELEMENTS + """
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
				  - { colour: green, at control: G, at equipment: G, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				  - { colour: blue, at control: B, at equipment: B, condition: sound }
				  - { colour: black, at control: not landed, at equipment: not landed, condition: sound }
				"""));
		assertTrue(said.contains("blue: changeover valve, wall B, equipment B, keep\n") && said.contains("black: common, wall not landed>C"), said);
	}

	@Test
	void emergencyHeatAndASecondStepShareTheAuxiliaryConductorWhenConductorsAreShort() {
		String said = Plans.said(plan(ONE + COOLING_PUMP + """
				indoor unit: { kind: air handler, fuel: electric, stages: 2 }
				auxiliary heat: { kind: electric elements, stages: 2, emergency relay: yes }
				""" + SEVEN + "  - { colour: orange, at control: O, at equipment: O, condition: sound }\n"));
		assertTrue(said.endsWith("second step of auxiliary heat with white\nemergency heat with white"), said);
	}

	@Test
	void withConductorsEnoughNothingIsShared() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				yellow: compressor, wall Y, equipment Y, keep
				orange: changeover valve, wall O, equipment O, keep
				green: indoor fan, wall G, equipment G, keep
				white: auxiliary heat, wall W>Aux, equipment W, keep
				blue: common, wall C, equipment C, keep
				black: second step of auxiliary heat, wall W2, equipment W2, keep
				brown: emergency heat, wall E, equipment E, keep
				""", ONE + COOLING_PUMP + """
				indoor unit: { kind: air handler, fuel: electric, stages: 2 }
				auxiliary heat: { kind: electric elements, stages: 2, emergency relay: yes }
				""" + SEVEN + """
				  - { colour: orange, at control: O, at equipment: O, condition: sound }
				  - { colour: brown, at control: E, at equipment: E, condition: sound }
				  - { colour: black, at control: W2, at equipment: W2, condition: sound }
				""");
	}

	@Test
	void noCallIsRobbedToFeedAnother() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: indoor fan, wall G, equipment G, keep
				white: auxiliary heat, wall W>Aux, equipment W, keep
				none for changeover valve
				none for common
				""", ONE.replace("common at the wall: yes", "common at the wall: no") + COOLING_PUMP + ELEMENTS + """
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
				  - { colour: green, at control: G, at equipment: G, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				""");
	}

	static Landing landing(LandingPlan plan, Duty duty) {
		return plan.landings().stream().filter(l -> l.need().duty() == duty).findFirst().orElseThrow(() -> new AssertionError(Plans.said(plan)));
	}
}
