package org.setwright.trade.calculation.airflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.trade.calculation.Inputs;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

class AirflowTest {
	@ParameterizedTest(name = "{0} tons: {1}, {2}, {3} cfm; {4} Btu/h")
	@CsvSource({
			"1.5, 525, 600, 675, 18000", "2, 700, 800, 900, 24000", "2.5, 875, 1000, 1125, 30000",
			"3, 1050, 1200, 1350, 36000", "4, 1400, 1600, 1800, 48000", "5, 1750, 2000, 2250, 60000" })
	void airflowFollowsFromTonsAndClimate(double tons, double humid, double usual, double dry, double btu) {
		assertEquals(humid, Airflow.cfm(tons, 350), 1e-9, "350, 400 and 500 seen in trade papers, 450 common practice; computed");
		assertEquals(usual, Airflow.cfm(tons, Airflow.USUAL_CFM_PER_TON), 1e-9);
		assertEquals(dry, Airflow.cfm(tons, 450), 1e-9);
		assertEquals(btu, new Quantity(tons, Unit.TON).in(Unit.BTU_PER_HOUR), 1e-6, "12,000 Btu/h a ton");
	}

	@Test
	void aTonIsThreeAndAHalfKilowatts() {
		assertEquals(3.5169, new Quantity(1, Unit.TON).in(Unit.KILOWATT), 5e-5, "computed");
	}

	@ParameterizedTest(name = "{0} cfm, {1} F° at {2} ft: {3} Btu/h")
	@CsvSource({ "400, 20, 0, 8640", "1200, 20, 0, 25920", "1200, 20, 5000, 21567" })
	void movingAirCarriesSensibleHeat(double cfm, double difference, double altitude, double btu) {
		assertEquals(btu, Airflow.sensibleBtuPerHour(cfm, difference, altitude), 1, "1.08 seen, first row seen; others computed");
	}

	@Test
	void theSensibleFactorAgreesWithItsMetricForm() {
		double watts = new Quantity(Airflow.sensibleBtuPerHour(1000, 9, 0), Unit.BTU_PER_HOUR).in(Unit.WATT);
		double litresPerSecondKelvin = new Quantity(1000, Unit.CUBIC_FOOT_PER_MINUTE).in(Unit.LITRE_PER_SECOND) * 5;
		assertEquals(1.21, watts / litresPerSecondKelvin, 0.005, "1.2 kg/m3 at 1.006 kJ/kg K; computed");
	}

	@Test
	void movingAirCarriesTotalHeat() {
		assertEquals(13_500, Airflow.totalBtuPerHour(400, 7.5), 1e-9, "4.5 seen; computed");
	}

	@ParameterizedTest(name = "{0} ft: {1} psi")
	@CsvSource({ "1000, 14.1727", "5000, 12.2278", "0, 14.696" })
	void pressureFallsWithAltitude(double feet, double psi) {
		assertEquals(psi, StandardAtmosphere.psi(feet), 5e-4, "open psychrometric library, run");
	}

	@Test
	void theSensibleFactorAt5000FeetIs0point9() {
		assertEquals(0.8986, 1.08 * StandardAtmosphere.densityFactor(5000), 5e-5, "computed: 1.08 * 12.2278 / 14.696");
	}

	@ParameterizedTest(name = "{0} kW: {1} Btu/h")
	@CsvSource({ "1, 3412.142", "5, 17061", "10, 34121", "15, 51182" })
	void electricHeatInBtu(double kilowatts, double btu) {
		assertEquals(btu, ElectricHeat.btuPerHour(kilowatts), 0.6, "3412 seen at EIA; exact by definition");
	}

	@ParameterizedTest(name = "{0} kW at {1} cfm: {2} F°")
	@CsvSource({ "15, 1200, 39.5", "10, 1000, 31.6" })
	void stripsWarmTheAir(double kilowatts, double cfm, double rise) {
		assertEquals(rise, ElectricHeat.riseFahrenheit(kilowatts, cfm, 0), 0.05, "computed");
	}

	@Test
	void riseAndAirflowAreEachOthersInverse() {
		Inputs.forMany(4213, in -> {
			double heat = in.number("heat", 1000, 150_000);
			double cfm = in.number("airflow", 200, 3000);
			double feet = in.number("altitude", -1000, 12_000);
			double rise = Airflow.riseFahrenheit(heat, cfm, feet);
			assertEquals(heat, 1.08 * StandardAtmosphere.densityFactor(feet) * cfm * rise, heat * 1e-9);
			if (rise >= 1 && rise <= 200) {
				assertEquals(cfm, Airflow.cfmForRise(heat, rise, feet), cfm * 1e-9);
				assertEquals(heat, Airflow.sensibleBtuPerHour(cfm, rise, feet), heat * 1e-9);
			}
			assertTrue(Airflow.riseFahrenheit(heat, cfm + 10, feet) < rise, "more air, less rise");
			assertTrue(Airflow.riseFahrenheit(heat, cfm, feet + 100) > rise, "thinner air, more rise");
		});
	}

	@Test
	void heatWithoutAirflowIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> ElectricHeat.riseFahrenheit(10, 0, 0));
	}

	@Test
	void elementsDrawTheirPowerOverTheVoltage() {
		assertEquals(41.667, ElectricHeat.amperes(10, 240), 5e-4, "10,000 W / 240 V by hand; electricians' tables list 41.7 A");
		assertEquals(20, ElectricHeat.amperes(4.8, 240), 1e-12, "4.8 kW at 240 V: 20 A, a common element");
	}
}
