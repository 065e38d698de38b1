package org.setwright.workbench.jobform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;

class AskedForTest {
	private final AskedFor asked = new AskedFor(Trade.catalogue());

	@Test
	void anAskedFieldIsItsOwnQuestion() {
		FactKind unit = Trade.catalogue().kind("OutdoorUnit").orElseThrow();
		JobField maker = JobField.of(unit, 0, unit.field("maker").orElseThrow());
		assertEquals(Optional.of(maker), asked.behind(maker));
		assertEquals(Optional.of(JobField.presence(unit)), asked.behind(JobField.presence(unit)));
	}

	@Test
	void behindEveryCalculatedFieldStandsAQuestion() {
		for (FactKind kind : Trade.catalogue().kinds()) {
			for (Field field : kind.fields()) {
				Optional<JobField> question = asked.behind(JobField.of(kind, 0, field));
				assertTrue(question.isPresent(), kind.name() + "." + field.name());
				assertTrue(question.get().field().flatMap(Field::calculation).isEmpty(), kind.name() + "." + field.name());
			}
		}
	}
}
