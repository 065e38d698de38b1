package org.setwright.trade.calculation.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.Transformer;
import org.setwright.trade.wiring.Wire;

/** Pull-in and load, reckoned by hand. Resistances per 1000 ft at 20 °C as a cable tester maker publishes them: 6.385 ohm for 18 AWG, 10.15 for 20 AWG. */
class ContactorCircuitTest {
	private static final Sketch SITE = Sketch.blank().with(SitePower.class, "voltage: 24 V")
			.with(Wire.class, "colour: red", "at equipment: R", "gauge: 18 AWG", "length: 50 ft");

	@ParameterizedTest(name = "{0} of {1}, inrush {2}: {3}, margin {4}, at most {5}")
	@CsvSource({
			"50 ft, 18 AWG, 60 VA, 20.807 V, 0.407 V, 62 ft", // 2 (50 + 50) ft * 6.385 ohm/kft * 2.5 A = 3.193 V
			"62 ft, 18 AWG, 60 VA, 20.424 V, 0.024 V, 62 ft", // just
			"63 ft, 18 AWG, 60 VA, 20.392 V, -0.008 V, 62 ft", // just not
			"50 ft, 20 AWG, 60 VA, 19.866 V, -0.534 V, 39 ft",
			"50 ft, 18 AWG, 30 VA, 22.404 V, 2.004 V, 175 ft" })
	void theContactorPullsInOnlyWithinTheLongestCable(String length, String gauge, String inrush, String volts, String margin, String longest) {
		Sketch job = SITE.with(OutdoorUnit.class, "kind: air conditioner", "contactor inrush: " + inrush, "contactor pull-in voltage: 20.4 V",
				"control cable length: " + length, "control cable gauge: " + gauge);
		assertEquals(volts, job.says(ContactorCircuit.class, "voltage at inrush"));
		assertEquals(margin, job.says(ContactorCircuit.class, "pull-in margin"));
		assertEquals(longest, job.says(ContactorCircuit.class, "longest control cable"));
	}

	@Test
	void aPullInVoltageNobodyReadLeavesTheMarginOpenAndIsAskedFor() {
		Sketch job = SITE.with(OutdoorUnit.class, "contactor inrush: 60 VA", "control cable length: 50 ft", "control cable gauge: 18 AWG");
		assertEquals("20.807 V", job.says(ContactorCircuit.class, "voltage at inrush"));
		assertEquals(List.of("outdoor unit: contactor pull-in voltage"), job.asksFor(ContactorCircuit.class, "pull-in margin"));
	}

	@ParameterizedTest
	@CsvSource({ "line voltage", "millivolt" })
	void otherVoltagesHaveNone(String voltage) {
		assertEquals("none", Sketch.blank().with(SitePower.class, "voltage: " + voltage).with(Wire.class, "at equipment: R").with(OutdoorUnit.class, "kind: air conditioner").says(ContactorCircuit.class, "voltage at inrush"));
	}

	@Test
	void withoutAnOutdoorUnitThereIsNone() {
		assertEquals("none", SITE.without(OutdoorUnit.class).says(ContactorCircuit.class, "voltage at inrush"));
	}

	@Test
	void labelsThatWereReadReplaceTheUsualDraw() {
		Sketch job = SITE.with(Transformer.class, "feeds: heating and cooling", "rating: 40 VA").with(Controller.class, "power draw: 2 VA")
				.with(OutdoorUnit.class, "kind: air-source heat pump", "stages: 1", "contactor holding load: 8 VA", "changeover valve load: 6 VA")
				.with(IndoorUnit.class, "kind: air handler", "fuel: electric", "stages: 1").with(AuxiliaryHeat.class, "kind: electric elements", "stages: 1")
				.without(Humidifier.class).without(Dehumidifier.class).without(Ventilator.class).without(ZonePanel.class);
		assertEquals("20.8 VA", job.says(StatedLoad.class, "holding load"), "2 + 8 + 6 + 2.4 for the fan + 2.4 for the elements");
		assertEquals("19.2 VA", job.says(StatedLoad.class, "left over"));
		assertEquals("79.2 VA", job.says(StatedLoad.class, "class 2 reserve"), "of 100 VA, NFPA 70 chapter 9 table 11(A), seen in secondary copies");
		assertEquals("26 VA", job.says(ControlCircuit.class, "usual load"), "unchanged: 2 + 12 + 7.2 + 2.4 + 2.4");
	}
}
