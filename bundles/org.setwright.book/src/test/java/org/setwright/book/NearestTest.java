package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
	private static final List<String> WORDS = List.of("humidifier", "dehumidifier", "zone panel", "outdoor unit",
			"air-source heat pump", "ground-source heat pump", "air conditioner", "red", "C");

	@ParameterizedTest
	@CsvSource({ "humidifer, humidifier", "huimdifier, humidifier", "dehumidifer, dehumidifier", "Zone-Pannel, zone panel",
			"outdoorunit, outdoor unit", "outdoor  units, outdoor unit", "ground source, ground-source heat pump",
			"air source heatpump, air-source heat pump", "AIR_CONDITIONER, air conditioner", "rde, red" })
	void findsTheWordThatWasMeant(String written, String meant) {
		assertEquals(Optional.of(meant), Nearest.to(written, WORDS));
	}

	@ParameterizedTest
	@CsvSource({ "boiler", "heat pump", "rbx", "D", "''", "x", "humidifierhumidifierhumidifierhumidifierhumidifierhumidifierhumidifier" })
	void offersNothingWhenNothingIsNear(String written) {
		assertEquals(Optional.empty(), Nearest.to(written, WORDS));
	}

	@Test
	void countsASwapAsOneSlip() {
		assertEquals(1, Nearest.slips("pump", "pmup"));
		assertEquals(3, Nearest.slips("kitten", "sitting"));
		assertEquals(4, Nearest.slips("", "pump"));
	}
}
