package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.landing.Plans.assertPlan;
import static org.setwright.landing.Plans.plan;

import org.junit.jupiter.api.Test;

/** Furnaces, boilers and air conditioners, each plan worked out by hand from the trade. */
class ConventionalTest {
	private static final String ONE = """
			site power: { voltage: 24 V }
			transformers: [heating and cooling]
			not fitted: everything else
			""";
	private static final String FURNACE = ONE + """
			outdoor unit: { kind: air conditioner, stages: 1 }
			indoor unit: { kind: furnace, fuel: natural gas, stages: 1, fan run by: equipment }
			wishes: { fan between calls: rests }
			controller: { power: common conductor, separate supplies: no }
			""";
	private static final String FOUR = """
			wires:
			  - { colour: red, at control: R, at equipment: R, condition: sound }
			  - { colour: white, at control: W, at equipment: W, condition: sound }
			  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
			  - { colour: green, at control: G, at equipment: G, condition: sound }
			""";

	@Test
	void twoStepsOfEachWithEightConductorsKeepTheirPlaces() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				white: first step of heat, wall W, equipment W, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: indoor fan, wall G, equipment G, keep
				blue: common, wall C, equipment C, keep
				light blue: second step of the compressor, wall Y2, equipment Y2, keep
				brown: second step of heat, wall W2, equipment W2, keep
				cap black
				""", ONE + """
				outdoor unit: { kind: air conditioner, stages: 2 }
				indoor unit: { kind: furnace, fuel: natural gas, stages: 2 }
				controller: { heat stages: 2, cool stages: 2, power: common conductor, separate supplies: no }
				""" + FOUR + """
				  - { colour: blue, at control: C, at equipment: C, condition: sound }
				  - { colour: light blue, at control: Y2, at equipment: Y2, condition: sound }
				  - { colour: brown, at control: W2, at equipment: W2, condition: sound }
				  - { colour: black, at control: not landed, at equipment: not landed, condition: sound }
				""");
	}

	@Test
	void fourConductorsAndNoCommonGiveUpTheFanSwitch() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				white: first step of heat, wall W, equipment W, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: common, wall G>C, equipment G>C, move
				indoor fan with yellow
				""", FURNACE + FOUR);
		String lost = plan(FURNACE + FOUR).shared().get(0).sentence();
		assertTrue(lost.contains("join G to Y") && lost.contains("can no longer run the fan by itself"), lost);
	}

	@Test
	void theFanSwitchIsKeptWhereTheOccupantsWantCirculation() {
		String job = FURNACE.replace("between calls: rests", "between calls: part of each hour") + FOUR;
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				white: first step of heat, wall W, equipment W, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: indoor fan, wall G, equipment G, keep
				none for common
				""", job);
	}

	@Test
	void aSpareFifthConductorBecomesTheCommon() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				white: first step of heat, wall W, equipment W, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: indoor fan, wall G, equipment G, keep
				blue: common, wall not landed>C, equipment not landed>C, new
				""", FURNACE + FOUR + "  - { colour: blue, at control: not landed, at equipment: not landed, condition: sound }\n");
	}

	@Test
	void amongSparesTheCustomaryColourBecomesTheCommon() {
		String said = Plans.said(plan(FURNACE + FOUR + """
				  - { colour: purple, at control: not landed, at equipment: not landed, condition: sound }
				  - { colour: brown, at control: not landed, at equipment: not landed, condition: sound }
				  - { colour: blue, at control: not landed, at equipment: not landed, condition: sound }
				"""));
		assertTrue(said.contains("blue: common") && said.contains("cap purple") && said.contains("cap brown"), said);
	}

	@Test
	void aSoundSpareGoesBeforeOneNobodyHasRungOut() {
		String said = Plans.said(plan(FURNACE + FOUR + """
				  - { colour: blue, at control: not landed, at equipment: not landed }
				  - { colour: purple, at control: not landed, at equipment: not landed, condition: sound }
				"""));
		assertTrue(said.contains("purple: common") && said.contains("cap blue"), said);
	}

	@Test
	void theReasonForTheSpareSaysWhatItWasPreferredTo() {
		LandingPlan plan = plan(FURNACE + FOUR + """
				  - { colour: black, at control: not landed, at equipment: not landed, condition: sound }
				  - { colour: brown, at control: not landed, at equipment: not landed, condition: sound }
				""");
		String reason = plan.landings().stream().filter(l -> l.need().label().equals("common")).findFirst().orElseThrow().reason();
		assertTrue(reason.contains("brown") || reason.contains("black"), reason);
		assertTrue(reason.contains("would do as well, and the order of the list of colours decides"), reason);
	}

	@Test
	void aBoilerOnTwoConductorsWithBatteriesNeedsNoMore() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				white: first step of heat, wall W, equipment W, keep
				""", ONE + """
				indoor unit: { kind: boiler, fuel: natural gas, stages: 1, distribution: radiators }
				controller: { power: batteries, separate supplies: no }
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				""");
	}

	@Test
	void aBoilerOnTwoConductorsCannotFeedAControllerThatNeedsTheCommon() {
		LandingPlan plan = plan(ONE + """
				indoor unit: { kind: boiler, fuel: natural gas, stages: 1, distribution: radiators }
				controller: { power: common conductor, separate supplies: no }
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				""");
		assertEquals("common", plan.unserved().get(0).label());
		var remedies = plan.unserved().get(0).remedies();
		assertTrue(remedies.get(0).sentence().startsWith("Pull a new cable") && remedies.get(1).sentence().contains("plug-in 24 V transformer")
				&& remedies.get(remedies.size() - 1).sentence().contains("batteries"), remedies.toString());
	}

	@Test
	void aFurnaceWithoutCoolingGivesAFreeConductorToTheFan() {
		String said = Plans.said(plan(ONE + """
				indoor unit: { kind: furnace, fuel: natural gas, stages: 1, fan run by: equipment }
				controller: { power: batteries, separate supplies: no }
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				  - { colour: green, at control: not landed, at equipment: not landed, condition: sound }
				"""));
		assertTrue(said.endsWith("green: indoor fan, wall not landed>G, equipment not landed>G, new"), said);
	}

	@Test
	void coolingAloneTakesNoConductorForHeat() {
		assertPlan("""
				red: 24 V supply, wall R, equipment R, keep
				yellow: compressor, wall Y, equipment Y, keep
				green: indoor fan, wall G, equipment G, keep
				cap white
				""", ONE + """
				outdoor unit: { kind: air conditioner, stages: 1 }
				indoor unit: { kind: air handler, fuel: none }
				controller: { power: batteries, separate supplies: no }
				""" + FOUR);
	}

	@Test
	void twoTransformersGetASupplyEach() {
		String said = Plans.said(plan("""
				site power: { voltage: 24 V, common at the wall: yes }
				transformers: [heating, cooling]
				outdoor unit: { kind: air conditioner, stages: 1 }
				indoor unit: { kind: furnace, fuel: oil, stages: 1 }
				controller: { power: common conductor, separate supplies: yes }
				wires:
				  - { colour: red, at control: Rh, at equipment: R, condition: sound }
				  - { colour: black, at control: Rc, at equipment: R, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
				  - { colour: green, at control: G, at equipment: G, condition: sound }
				  - { colour: blue, at control: C, at equipment: C, condition: sound }
				not fitted: everything else
				"""));
		assertTrue(said.startsWith("red: 24 V supply for heating, wall Rh, equipment R, keep ?\nblack: 24 V supply for cooling, wall Rc, equipment R, keep ?"), said);
		assertTrue(said.contains("blue: common, wall C, equipment C, keep ?"), "which transformer the common is of has to be found out: " + said);
	}

	@Test
	void theZonePanelTakesTheCallsOnItsOwnTerminals() {
		LandingPlan plan = plan("""
				site power: { voltage: 24 V, common at the wall: yes }
				transformers: [zone panel]
				outdoor unit: { kind: air-source heat pump, stages: 2 }
				indoor unit: { kind: air handler, fuel: electric, stages: 1 }
				auxiliary heat: { kind: electric elements, stages: 1 }
				zone panel: { zones: 3, expects: separate heating and cooling, serves: air dampers }
				controller: { power: common conductor, separate supplies: no }
				equipment terminals:
				  - { mark: R, belongs to: zone panel }
				  - { mark: C, belongs to: zone panel }
				  - { mark: W, belongs to: zone panel }
				  - { mark: Y, belongs to: zone panel }
				  - { mark: G, belongs to: zone panel }
				wires:
				  - { colour: red, at control: R, at equipment: R, condition: sound }
				  - { colour: white, at control: W, at equipment: W, condition: sound }
				  - { colour: yellow, at control: Y, at equipment: Y, condition: sound }
				  - { colour: green, at control: G, at equipment: G, condition: sound }
				  - { colour: blue, at control: C, at equipment: C, condition: sound }
				not fitted: everything else
				""");
		assertEquals("red white yellow green blue", String.join(" ", plan.landings().stream().map(l -> l.conductor().label()).toList()));
		assertTrue(plan.landings().stream().allMatch(l -> l.atEquipment().machine().orElseThrow().label().equals("zone panel")));
		assertEquals(0, plan.unserved().size(), "no changeover valve and no second step at the zone control");
	}
}
