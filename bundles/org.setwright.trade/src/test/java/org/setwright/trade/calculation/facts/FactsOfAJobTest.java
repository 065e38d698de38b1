package org.setwright.trade.calculation.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.Building;
import org.setwright.trade.house.Climate;
import org.setwright.trade.house.EnergyPrices;
import org.setwright.trade.wiring.SitePower;
import org.setwright.trade.wiring.Transformer;
import org.setwright.trade.wiring.Wire;

/** Computed facts of jobs small enough to be reckoned by hand. */
class FactsOfAJobTest {
	private static final String[] PUMP = { "kind: air-source heat pump", "heating capacity at 47 °F: 35000 Btu/h",
			"heating capacity at 17 °F: 21000 Btu/h", "COP at 47 °F: 3.4", "COP at 17 °F: 2.3", "stages: 1",
			"lowest outdoor temperature: -4 °F" };
	private static final Sketch HOUSE = Sketch.blank().with(Building.class, "design heat loss: 45 kBtu/h", "window glazing: double")
			.with(Climate.class, "heating design temperature: 5 °F", "elevation: 0 ft");

	@Test
	void theWorkedHeatPumpBalancesWhereComputedByHand() {
		Sketch job = HOUSE.with(OutdoorUnit.class, PUMP);
		assertEquals("31.241 °F", job.says(HeatPumpBalance.class, "balance point"));
		assertEquals("8.675 kW", job.says(HeatPumpBalance.class, "shortfall at design"));
		assertEquals("32 °F", job.says(HeatPumpBalance.class, "auxiliary lockout"));
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource({ "air conditioner, none", "ground-source heat pump, none", "air-source heat pump, unknown" })
	void onlyAnAirSourceHeatPumpHasABalancePoint(String kind, String says) {
		assertEquals(says, Sketch.blank().with(OutdoorUnit.class, "kind: " + kind).says(HeatPumpBalance.class, "balance point"));
	}

	@Test
	void withoutAnOutdoorUnitThereIsNoBalancePointAndUnlookedItIsOpen() {
		assertEquals("none", HOUSE.without(OutdoorUnit.class).says(HeatPumpBalance.class, "balance point"));
		assertEquals("unknown whether", HOUSE.says(HeatPumpBalance.class, "balance point"));
		assertEquals(List.of("whether there is an outdoor unit"), HOUSE.asksFor(HeatPumpBalance.class, "balance point"));
	}

	@Test
	void onlyTheNumbersStillMissingAreAskedFor() {
		Sketch job = HOUSE.with(OutdoorUnit.class, "kind: air-source heat pump", "heating capacity at 47 °F: 35000 Btu/h");
		assertEquals(List.of("outdoor unit: heating capacity at 17 °F"), job.asksFor(HeatPumpBalance.class, "balance point"));
	}

	@Test
	void whatEveryJobHasIsAskedForByItsFieldsEvenWhenNobodyMentionedIt() {
		Sketch job = Sketch.blank().with(OutdoorUnit.class, PUMP);
		assertEquals(List.of("building: design heat loss", "climate: heating design temperature"),
				job.asksFor(HeatPumpBalance.class, "balance point"));
	}

	@Test
	void aHeatPumpThatAlwaysKeepsUpSaysSo() {
		Sketch job = Sketch.blank().with(Building.class, "design heat loss: 4000 Btu/h")
				.with(Climate.class, "heating design temperature: 40 °F").with(OutdoorUnit.class, "kind: air-source heat pump",
						"heating capacity at 47 °F: 60000 Btu/h", "heating capacity at 17 °F: 60000 Btu/h");
		assertEquals("-80 °F", job.says(HeatPumpBalance.class, "balance point"));
		assertEquals("0 kW", job.says(HeatPumpBalance.class, "shortfall at design"));
	}

	@ParameterizedTest(name = "{0}, {1}, {2} steps: enough {3}, needs {4}")
	@CsvSource({ "electric elements, 10 kW, 2, yes, 2", "electric elements, 9 kW, 1, yes, 1", "electric elements, 5 kW, 2, no, 2",
			"electric elements, 20 kW, 2, yes, 1", "furnace, 12 kW, 1, no, 1", "furnace, 20 kW, 2, yes, 2" })
	void auxiliaryHeatIsMeasuredByTheShortfallAndAFurnaceByTheWholeLoss(String kind, String output, int steps, String enough,
			int needed) {
		Sketch job = HOUSE.with(OutdoorUnit.class, PUMP).with(AuxiliaryHeat.class, "kind: " + kind, "heat output: " + output,
				"stages: " + steps);
		assertEquals(enough, job.says(AuxiliaryNeed.class, "enough"), "8.675 kW short of 45 kBtu/h, which is 13.19 kW");
		assertEquals(Integer.toString(needed), job.says(AuxiliaryNeed.class, "needed steps"));
	}

	@Test
	void dualFuelChangesOverByTheHighestOfItsLimits() {
		Sketch job = dualFuel("natural gas").with(EnergyPrices.class, "electricity per kWh: 0.15", "natural gas per therm: 1.67");
		assertEquals("2.501", job.says(DualFuelChangeover.class, "break-even COP"), "0.15 * 100000 * 0.95 / (3412.142 * 1.67)");
		assertEquals("22.475 °F", job.says(DualFuelChangeover.class, "changeover by cost"));
		assertEquals("no", job.says(DualFuelChangeover.class, "extrapolated"));
		assertEquals("32 °F", job.says(DualFuelChangeover.class, "working changeover"), "the balance point of 31.241 °F is higher, and a controller takes whole degrees");
	}

	@Test
	void aChangeoverOutsideTheRatingsIsMarked() {
		Sketch job = dualFuel("natural gas").with(EnergyPrices.class, "electricity per kWh: 0.15", "natural gas per therm: 1.2");
		assertEquals("49.188 °F", job.says(DualFuelChangeover.class, "changeover by cost"));
		assertEquals("50 °F", job.says(DualFuelChangeover.class, "working changeover"));
		assertEquals("yes", job.says(DualFuelChangeover.class, "extrapolated"));
	}

	@Test
	void anExtrapolatedCostThatDecidesNothingDoesNoHarm() {
		Sketch job = dualFuel("propane").with(EnergyPrices.class, "electricity per kWh: 0.15", "propane per gallon: 2.5");
		assertEquals("-4.062 °F", job.says(DualFuelChangeover.class, "changeover by cost"), "break-even COP 1.5278");
		assertEquals("32 °F", job.says(DualFuelChangeover.class, "working changeover"));
		assertEquals("no", job.says(DualFuelChangeover.class, "extrapolated"));
	}

	@Test
	void onlyThePriceOfTheFuelBurntIsAskedFor() {
		assertEquals(List.of("energy prices: propane per gallon"), dualFuel("propane").with(EnergyPrices.class, "electricity per kWh: 0.15")
				.asksFor(DualFuelChangeover.class, "changeover by cost"));
	}

	@ParameterizedTest
	@CsvSource({ "electric", "none" })
	void aFurnaceThatBurnsNothingIsNoDualFuel(String fuel) {
		assertEquals("none", dualFuel(fuel).says(DualFuelChangeover.class, "changeover by cost"));
	}

	private static Sketch dualFuel(String fuel) {
		return HOUSE.with(OutdoorUnit.class, PUMP).with(AuxiliaryHeat.class, "kind: furnace")
				.with(IndoorUnit.class, "kind: furnace", "fuel: " + fuel, "efficiency: 95%");
	}

	@ParameterizedTest(name = "{0}, {1}: {2}, {3}")
	@CsvSource({ "ASHRAE 62.2, 120 cfm, 90 cfm, 45 min", "IRC or IMC, 120 cfm, 50 cfm, 25 min", "ASHRAE 62.2, 90 cfm, 90 cfm, 60 min",
			"ASHRAE 62.2, 80 cfm, 90 cfm, none", "IRC or IMC, 80 cfm, 50 cfm, 38 min" })
	void ventilationFollowsTheRuleInForce(String rule, String fan, String need, String minutes) {
		Sketch job = Sketch.blank().with(Building.class, "floor area: 2000 ft2", "bedrooms: 3", "ventilation rule: " + rule)
				.with(Ventilator.class, "airflow: " + fan);
		assertEquals(need, job.says(VentilationNeed.class, "airflow needed"));
		assertEquals(minutes, job.says(VentilatorRunTime.class, "minutes per hour"));
	}

	@Test
	void theVentilationRuleIsNeverGuessed() {
		Sketch job = Sketch.blank().with(Building.class, "floor area: 2000 ft2", "bedrooms: 3").with(Ventilator.class, "airflow: 120 cfm");
		assertEquals("unknown", job.says(VentilationNeed.class, "airflow needed"));
		assertEquals("unknown whether", job.says(VentilatorRunTime.class, "minutes per hour"));
		assertEquals(List.of("building: ventilation rule"), job.asksFor(VentilatorRunTime.class, "minutes per hour"));
	}

	@Test
	void aHouseWithoutVentilatorHasANeedButNoRunTime() {
		Sketch job = Sketch.blank().with(Building.class).without(Ventilator.class);
		assertEquals("none", job.says(VentilatorRunTime.class, "minutes per hour"));
	}

	@ParameterizedTest(name = "{0}, {1}: {2}")
	@CsvSource({ "double, 5 °F, 27%", "double, -20 °F, 15%", "triple, 40 °F, 40%", "single, 10 °F, 19%", "single, -20 °F, 6%" })
	void humidityIsLimitedByGlassAndCold(String glazing, String design, String limit) {
		Sketch job = Sketch.blank().with(Building.class, "window glazing: " + glazing)
				.with(Climate.class, "heating design temperature: " + design);
		assertEquals(limit, job.says(HumidityLimit.class, "at design temperature"));
	}

	@Test
	void loadsOnTheTransformerAddUp() {
		Sketch job = circuit().with(Humidifier.class, "powered by: equipment transformer", "load: 12 VA");
		assertEquals("38 VA", job.says(ControlCircuit.class, "usual load"),
				"controller 2, fan 2.4, contactor 12, valve 7.2, relay of the elements 2.4, humidifier 12");
	}

	@Test
	void whatHasPowerOfItsOwnIsNotCounted() {
		Sketch job = circuit().with(Humidifier.class, "powered by: own transformer");
		assertEquals("26 VA", job.says(ControlCircuit.class, "usual load"));
		assertEquals("14 VA", job.says(ControlCircuit.class, "spare"));
		assertEquals("0.692 V", job.says(ControllerSupply.class, "voltage drop"), "2 * 50 ft * 6.385 ohm/kft * 26 VA / 24 V");
	}

	@Test
	void aWireOrTransformerNobodyTracedMayBeTheWorseOne() {
		Sketch job = circuit().without(Humidifier.class);
		assertEquals("0.692 V", job.says(ControllerSupply.class, "voltage drop"));
		assertEquals("unknown", job.with(Wire.class, "colour: blue").says(ControllerSupply.class, "voltage drop"));
		assertEquals("1.104 V", job.with(Wire.class, "at equipment: Rc", "gauge: 20 AWG", "length: 15.3 m")
				.says(ControllerSupply.class, "voltage drop"), "2 * 50.197 ft * 10.153 ohm/kft * 26 VA / 24 V, the worse of two");
		assertEquals("14 VA", job.says(ControlCircuit.class, "spare"));
		assertEquals("unknown", job.with(Transformer.class, "rating: 20 VA").says(ControlCircuit.class, "spare"));
		assertEquals("14 VA", job.with(Transformer.class, "feeds: accessory", "rating: 20 VA").says(ControlCircuit.class, "spare"));
	}

	@Test
	void twoSuppliesAreNotAddedUpAsOne() {
		Sketch job = Sketch.blank().with(SitePower.class, "voltage: 24 V").with(Transformer.class, "feeds: heating")
				.with(Transformer.class, "feeds: cooling");
		assertEquals("none", job.says(ControlCircuit.class, "usual load"));
		assertEquals("none", job.says(ControllerSupply.class, "voltage drop"));
	}

	@ParameterizedTest
	@CsvSource({ "line voltage", "millivolt" })
	void otherVoltagesHaveNoControlCircuitToReckon(String voltage) {
		assertEquals("none", Sketch.blank().with(SitePower.class, "voltage: " + voltage).says(ControlCircuit.class, "spare"));
	}

	private static Sketch circuit() {
		return Sketch.blank().with(SitePower.class, "voltage: 24 V").with(Transformer.class, "feeds: heating and cooling", "rating: 40 VA")
				.with(Controller.class, "power draw: 2 VA").with(OutdoorUnit.class, "kind: air-source heat pump", "stages: 1")
				.with(IndoorUnit.class, "kind: air handler", "fuel: none")
				.with(AuxiliaryHeat.class, "kind: electric elements", "stages: 1")
				.with(Wire.class, "colour: red", "at equipment: R", "gauge: 18 AWG", "length: 50 ft")
				.with(Wire.class, "colour: white", "at equipment: W").without(Dehumidifier.class, Ventilator.class, ZonePanel.class);
	}

	@Test
	void airPerTonFollowsFromAirflowAndCapacity() {
		Sketch job = Sketch.blank().with(OutdoorUnit.class, "cooling capacity at 95 °F: 36000 Btu/h")
				.with(IndoorUnit.class, "kind: air handler", "airflow: 1050 cfm");
		assertEquals("350 cfm", job.says(CoolingAirflow.class, "per ton"));
		assertEquals("none", Sketch.blank().with(IndoorUnit.class, "kind: boiler").says(CoolingAirflow.class, "per ton"));
	}

	@ParameterizedTest(name = "at {0}: {1}")
	@CsvSource({ "0 ft, 39.492 F°", "5000 ft, 47.464 F°" })
	void electricElementsWarmTheAir(String elevation, String rise) {
		Sketch job = Sketch.blank().with(IndoorUnit.class, "kind: air handler", "fuel: none", "airflow: 1200 cfm")
				.with(AuxiliaryHeat.class, "kind: electric elements", "heat output: 15 kW").with(Climate.class, "elevation: " + elevation);
		assertEquals(rise, job.says(ElectricHeatRise.class, "rise"), "15 kW at 1200 cfm: 39.5 F° at sea level");
	}

	@ParameterizedTest(name = "{0}: {1}, {2}")
	@CsvSource({ "heat output: 9.6 kW, 40 A, 34.667 A", "heat output: 10 kW, 41.667 A, 36.111 A", "kind: electric elements, unknown, unknown" })
	void electricElementsDrawCurrent(String heat, String at240, String at208) {
		Sketch job = Sketch.blank().with(IndoorUnit.class, "kind: air handler", "fuel: none")
				.with(AuxiliaryHeat.class, "kind: electric elements", heat);
		assertEquals(at240, job.says(ElectricHeatCurrent.class, "at 240 V"), "9600 W / 240 V = 40 A");
		assertEquals(at208, job.says(ElectricHeatCurrent.class, "at 208 V"), "the same element draws 208/240 of it");
		Sketch furnace = Sketch.blank().with(IndoorUnit.class, "kind: furnace", "fuel: natural gas").without(AuxiliaryHeat.class);
		assertEquals("none", furnace.says(ElectricHeatCurrent.class, "at 240 V"));
	}

	@ParameterizedTest(name = "{0}: {1}")
	@CsvSource({ "America/Denver, yes", "America/Phoenix, no", "Denver, none" })
	void theTimeZoneTellsWhetherTheClockChanges(String zone, String changes) {
		assertEquals(changes, Sketch.blank().with(Climate.class, "time zone: " + zone).says(LocalClock.class, "changes twice a year"));
	}
}
