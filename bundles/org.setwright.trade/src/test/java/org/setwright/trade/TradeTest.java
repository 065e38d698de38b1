package org.setwright.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.wiring.Wire;

class TradeTest {
	@Test
	void factsAreBuiltFromTheCatalogueAndReadBack() {
		FactKind kind = Trade.catalogue().kind(OutdoorUnit.class);
		var stages = kind.field("stages").orElseThrow();
		var maker = kind.field("maker").orElseThrow();
		OutdoorUnit unit = (OutdoorUnit) kind.create(Map.of(stages, new Value.Count(2)));
		assertEquals(Answer.of(2), unit.stages());
		assertTrue(kind.answer(unit, maker).value().isEmpty(), "nobody said who made it");
	}

	@Test
	void choicesAreBuiltFromTheCatalogueAndReadBack() {
		FactKind kind = Trade.catalogue().kind(OutdoorUnit.class);
		var sense = kind.field("valveEnergisedIn").orElseThrow();
		Value heating = sense.domain().read("heating").orElseThrow();
		OutdoorUnit unit = (OutdoorUnit) kind.create(Map.of(sense, heating));
		assertEquals(Answer.of(OutdoorUnit.ValveSense.HEATING), unit.valveEnergisedIn());
		assertEquals(Answer.of(heating), kind.answer(unit, sense));
	}

	@Test
	void placesOfAJobReadAsEnglish() {
		assertEquals("whether there is an outdoor unit", JobField.presence(Trade.catalogue().kind(OutdoorUnit.class)).label());
		assertEquals("whether there is auxiliary heat", JobField.presence(Trade.catalogue().kind(AuxiliaryHeat.class)).label());
		assertEquals("which wires there are", JobField.presence(Trade.catalogue().kind(Wire.class)).label());
	}
}
