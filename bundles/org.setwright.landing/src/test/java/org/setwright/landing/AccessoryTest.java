package org.setwright.landing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.landing.HeatPumpTest.landing;
import static org.setwright.landing.Plans.plan;

import org.junit.jupiter.api.Test;
import org.setwright.landing.need.Duty;

/** Accessories, sensors and terminals that are listed. */
class AccessoryTest {
	private static final String FURNACE = """
			site power: { voltage: 24 V }
			transformers: [heating and cooling]
			indoor unit: { kind: boiler, fuel: natural gas, stages: 1 }
			controller: { power: batteries, separate supplies: no, humidity output: yes, ventilation output: yes }
			not fitted: everything else
			""";
	private static final String WIRES = """
			wires:
			  - { colour: red, at control: R, at equipment: R, condition: sound }
			  - { colour: white, at control: W, at equipment: W, condition: sound }
			""";
	private static final String SPARE = "  - { colour: %s, at control: not landed, at equipment: not landed, condition: sound }\n";

	@Test
	void aHumidifierOnTheEquipmentsTransformerTakesOneConductor() {
		String said = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("black") + "humidifier: { kind: bypass, controlled by: controller, powered by: equipment transformer }\n"));
		assertTrue(said.endsWith("black: humidifier, wall not landed>Hum, equipment not landed>Hum, new"), said);
	}

	@Test
	void aHumidifierWithATransformerOfItsOwnTakesTwoOrNone() {
		String own = "humidifier: { kind: bypass, controlled by: controller, powered by: own transformer }\n";
		String two = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("black") + SPARE.formatted("brown") + own));
		assertTrue(two.contains("conductor 1 of 2") && two.contains("conductor 2 of 2"), two);
		String one = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("black") + own));
		assertTrue(one.endsWith("cap black\nnone for humidifier, 2 conductors"), "half a pair is of no use: " + one);
	}

	@Test
	void withThreeSparesAPairAndASingleAreBothServed() {
		String said = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("black") + SPARE.formatted("brown") + SPARE.formatted("tan")
				+ "humidifier: { kind: bypass, controlled by: controller, powered by: own transformer }\n"
				+ "ventilator: { kind: exhaust fan, controlled by: controller, powered by: equipment transformer, airflow: 100 cfm }\n"));
		assertTrue(said.contains("humidifier, conductor 2 of 2") && said.contains(": ventilator,"), said);
	}

	@Test
	void anAccessoryWithAControlOfItsOwnTakesNone() {
		String said = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("black") + "humidifier: { kind: bypass, controlled by: own control }\n"));
		assertTrue(said.endsWith("cap black"), said);
	}

	@Test
	void aWiredSensorTakesItsOwnPairAndNothingElse() {
		String said = Plans.said(plan(FURNACE + WIRES + """
				  - { colour: grey, at control: S1, at equipment: S1, condition: sound }
				  - { colour: tan, at control: S2, at equipment: S2, condition: sound }
				outdoor sensor: { connection: wired }
				"""));
		assertTrue(said.endsWith("grey: outdoor sensor, conductor 1 of 2, wall S1, equipment S1, keep\ntan: outdoor sensor, conductor 2 of 2, wall S2, equipment S2, keep"), said);
		String none = Plans.said(plan(FURNACE + WIRES + SPARE.formatted("tan") + SPARE.formatted("grey") + "outdoor sensor: { connection: wired }\n"));
		assertTrue(none.endsWith("cap tan\ncap grey\nnone for outdoor sensor, 2 conductors"), "spares in the 24 V cable are no sensor pair: " + none);
	}

	@Test
	void aWirelessSensorTakesNone() {
		assertEquals(0, plan(FURNACE + WIRES + "outdoor sensor: { connection: wireless }\n").unserved().size());
	}

	@Test
	void aTerminalTheControllerLacksIsNamedAsTheReason() {
		LandingPlan plan = plan(FURNACE.replace("boiler, fuel: natural gas, stages: 1", "furnace, fuel: natural gas, stages: 2") + WIRES + SPARE.formatted("brown") + "controller terminals: [R, W, G]\n");
		var unserved = plan.unserved().stream().filter(u -> u.need().duty() == Duty.HEAT_2).findFirst().orElseThrow();
		assertEquals("The controller has no terminal for it, as entered in the job.", unserved.because());
	}

	@Test
	void anOutputTheControllersSheetRulesOutIsNotLanded() {
		String vent = FURNACE.replace("ventilation output: yes", "ventilation output: %s") + WIRES + SPARE.formatted("black")
				+ "ventilator: { kind: exhaust fan, controlled by: controller, powered by: equipment transformer, airflow: 100 cfm }\n";
		assertTrue(Plans.said(plan(vent.formatted("yes"))).contains("black: ventilator"), Plans.said(plan(vent.formatted("yes"))));
		assertTrue(!Plans.said(plan(vent.formatted("no"))).contains("black: ventilator"), Plans.said(plan(vent.formatted("no"))));
	}

	@Test
	void whatNobodyHasSaidMayTakeConductorsIsNamed() {
		String said = plan(FURNACE.replace("not fitted: everything else\n", "outdoor unit: none\n") + WIRES).toFindOut().toString();
		assertTrue(said.contains("whether there is auxiliary heat, a zone panel, a humidifier") && !said.contains("an outdoor unit"), said);
		assertTrue(!plan(FURNACE + WIRES).toFindOut().toString().contains("whether there is"));
	}

	@Test
	void listedTerminalsDecideWhereAConductorGoes() {
		String pump = """
				site power: { voltage: 24 V, common at the wall: yes }
				transformers: [heating and cooling]
				outdoor unit: { kind: air-source heat pump, stages: 1, valve energised in: cooling }
				indoor unit: { kind: air handler, fuel: none }
				controller: { power: batteries, separate supplies: no, runs heat pumps: yes }
				controller terminals: [R, C, Y, G, O/B, Aux]
				equipment terminals: [R, C, Y, G, O]
				not fitted: everything else
				""" + WIRES + SPARE.formatted("yellow") + SPARE.formatted("green") + SPARE.formatted("orange");
		assertEquals("orange: changeover valve, wall not landed>O/B, equipment not landed>O, new", Plans.said(landing(plan(pump), Duty.CHANGEOVER)));
	}

	@Test
	void terminalsThatAreNotListedAreSaidToBeTakenForGranted() {
		LandingPlan silent = plan(FURNACE.replace("not fitted: everything else\n", "") + WIRES);
		assertEquals(2, silent.toFindOut().stream().filter(c -> c.sentence().contains("terminals are not listed")).count());
		LandingPlan listed = plan(FURNACE + WIRES + "controller terminals: [R, W]\nequipment terminals: [R, W]\n");
		assertEquals(0, listed.toFindOut().size());
	}
}
