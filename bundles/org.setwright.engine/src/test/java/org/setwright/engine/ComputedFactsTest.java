package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.setwright.engine.Books.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/** Rules on facts that are worked out and that not every job has. */
class ComputedFactsTest {
	private static final String BELOW = rule("below", "shop practice", "HeatPumpBalance( $t : auxiliaryLockout )",
			"propose( AUXILIARY_LOCKOUT, $t );");
	private static final String ANY = rule("any", "shop practice", "exists HeatPumpBalance( )", "find( ANY );");
	private static final String NONE = rule("none", "shop practice", "not HeatPumpBalance( )", "find( NONE );");
	private static final String PUMP = "OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, heatingCapacityAt47F=35000 Btu/h, heatingCapacityAt17F=21000 Btu/h";
	private static final String[] WORKED = { PUMP, "Building designHeatLoss=45000 Btu/h", "Climate heatingDesignTemperature=5 °F" };

	@Test
	void aRuleProposesWhatIsWorkedOut() {
		assertEquals("32 °F", lockout(Books.edition(BELOW).run(Jobs.of(WORKED))).value().orElseThrow().text());
	}

	@Test
	void whatIsMissingIsAskedForWhereItIsStated() {
		Outcome outcome = Books.edition(BELOW).run(Jobs.of(PUMP, "AuxiliaryHeat kind=ELECTRIC_ELEMENTS", "OutdoorSensor", "Controller outdoorLockouts=yes"));
		assertEquals(List.of("building: design heat loss", "climate: heating design temperature"),
				outcome.toFindOut().stream().filter(t -> t.holdsOpen().stream().anyMatch(s -> s.id().equals("AUXILIARY_LOCKOUT")))
						.map(t -> t.unknown().label()).sorted().toList());
	}

	@Test
	void whileItIsUnknownWhetherThereIsOneBothRulesStayOpen() {
		Outcome outcome = Books.edition(ANY + NONE).run(Job.blank());
		assertEquals(List.of(), outcome.findings());
		assertEquals(List.of("any", "none"), outcome.heldOpen().stream().map(h -> h.rule().name()).sorted().toList());
		assertEquals(List.of("building: design heat loss", "climate: heating design temperature", "whether there is an outdoor unit"),
				outcome.heldOpen().stream().flatMap(h -> h.by().stream()).map(JobField::label).distinct().sorted().toList());
	}

	@Test
	void onceTheKindOfUnitIsKnownExactlyOneOfThemSpeaks() {
		assertEquals(List.of("ANY"), findings("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP"));
		assertEquals(List.of("NONE"), findings("OutdoorUnit kind=AIR_CONDITIONER"));
		assertEquals(List.of("NONE"), findings("OutdoorUnit none"));
	}

	private static List<String> findings(String job) {
		return Books.edition(ANY + NONE).run(Jobs.of(job)).findings().stream().map(f -> f.name()).toList();
	}

	private static SettingOutcome lockout(Outcome outcome) {
		return outcome.setting(Trade.catalogue().setting("AUXILIARY_LOCKOUT").orElseThrow()).orElseThrow();
	}
}
