package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.StartUpPhase;
import org.setwright.trade.catalogue.Value;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;

/** The jobs of the starter book span what a shop meets: equipment, fuels, steps, accessories, wiring faults, open questions. */
class StarterSpanTest {
	private static final int FEWEST_JOBS = 180;

	@Test
	void thereAreEnoughJobs() {
		assertTrue(StarterRuns.BOOK.jobs().size() >= FEWEST_JOBS, StarterRuns.BOOK.jobs().size() + " jobs");
		StarterRuns.BOOK.jobs().forEach(j -> assertTrue(!j.notes().isBlank() && !j.expected().isEmpty(), j.name() + " says why and what"));
	}

	/** Every choice and every number of steps; colours and letters, which prove nothing, are left out. */
	@Test
	void everyChoiceOfEveryFieldOccursOnSomeJob() {
		List<String> missing = new ArrayList<>();
		for (FactKind kind : Trade.catalogue().kinds()) {
			for (Field field : kind.fields()) {
				boolean letters = field.label().equals("colour") || field.label().equals("mark") || field.label().startsWith("at ");
				boolean steps = field.domain() instanceof Domain.Choices || field.label().equals("stages") && field.domain() instanceof Domain.Whole;
				if (!kind.calculated() && !letters && steps) {
					Set<Object> seen = seen(kind, field);
					field.domain().listed().stream().filter(v -> !seen.contains(v.plain()))
							.forEach(v -> missing.add(kind.label() + " " + field.label() + ": " + v.text()));
				}
			}
		}
		assertEquals(List.of(), missing);
	}

	@Test
	void everySortOfEquipmentMeetsEveryFuelItIsSoldWith() {
		Set<String> seen = new TreeSet<>();
		for (Outcome outcome : StarterRuns.outcomes()) {
			outcome.job().one(IndoorUnit.class).ifPresent(u -> seen.add(u.kind() + " " + u.fuel()));
			outcome.job().one(OutdoorUnit.class).ifPresent(o -> outcome.job().one(AuxiliaryHeat.class)
					.ifPresentOrElse(a -> seen.add(o.kind() + " with " + a.kind()), () -> seen.add(o.kind() + " alone")));
		}
		List<String> wanted = List.of("FURNACE NATURAL_GAS", "FURNACE PROPANE", "FURNACE OIL", "FURNACE ELECTRIC", "AIR_HANDLER NO_FUEL",
				"AIR_HANDLER ELECTRIC", "BOILER NATURAL_GAS", "BOILER PROPANE", "BOILER OIL", "BOILER ELECTRIC",
				"HYDRONIC_AIR_HANDLER NATURAL_GAS", "HYDRONIC_AIR_HANDLER OIL", "ROOM_HEATER NATURAL_GAS", "ROOM_HEATER PROPANE",
				"ROOM_HEATER OIL", "ROOM_HEATER ELECTRIC", "AIR_CONDITIONER alone", "AIR_SOURCE_HEAT_PUMP alone",
				"AIR_SOURCE_HEAT_PUMP with ELECTRIC_ELEMENTS", "AIR_SOURCE_HEAT_PUMP with FURNACE", "AIR_SOURCE_HEAT_PUMP with HOT_WATER_COIL",
				"GROUND_SOURCE_HEAT_PUMP alone", "GROUND_SOURCE_HEAT_PUMP with ELECTRIC_ELEMENTS", "GROUND_SOURCE_HEAT_PUMP with FURNACE");
		assertEquals(List.of(), wanted.stream().filter(w -> !seen.contains(w)).toList(), () -> "seen: " + seen);
	}

	/** Wiring faults, impossible jobs and old controls set wrongly: on some job the rule that finds it speaks. */
	@ParameterizedTest
	@ValueSource(strings = { "A broken or shorted conductor is of no use", "The two ends of a compressor conductor disagree",
			"An X terminal has to be traced", "A changeover conductor on a job without a heat pump", "White beside a heat pump is auxiliary heat",
			"Thick conductors may carry line voltage", "No common for a controller that needs one", "A spare conductor can become the common",
			"Two transformers and one supply terminal", "Too many volts between R and C", "Too few volts between R and C",
			"The transformer is too small for its loads", "The cable is too long or too thin", "Water valves may bring power of their own",
			"A sensor pair never sees 24 V", "The controller cannot run a heat pump", "The controller has too few heat outputs for this heat pump",
			"The controller has no output for the second auxiliary step", "The controller has two heat outputs for a furnace of three steps",
			"The ventilator is too small", "A controller not rated for a thermopile circuit", "A maker's data line",
			"The old valve entry was reversed: it said cooling", "The old valve entry was reversed: it said heating",
			"The old control tied two transformers together", "The old control left the link out of one transformer",
			"The old control called one step of heat", "The old control ran the fan of a burner", "The old control cycled a slow system too often",
			"COP entered higher in cold than in mild air", "The auxiliary heat is too small for the coldest day" })
	void everyFaultOccursOnSomeJob(String rule) {
		assertTrue(StarterRuns.EDITION.rule(rule).isPresent(), "there is such a rule");
		assertTrue(StarterRuns.outcomes().stream().anyMatch(o -> StarterRuns.speaking(o).contains(rule)), "no job raises it");
	}

	@Test
	void someJobsEndInGapsSomeInDisputesAndMostInNeither() {
		long gaps = StarterRuns.outcomes().stream().filter(o -> o.count(State.GAP) > 0).count();
		long disputes = StarterRuns.outcomes().stream().filter(o -> o.count(State.DISPUTED) > 0).count();
		assertTrue(gaps >= 8 && disputes >= 1 && gaps + disputes < StarterRuns.BOOK.jobs().size() / 2, gaps + " with gaps, " + disputes + " with disputes");
	}

	/** Every start-up rule is needed on some job, and none on every job but the few that belong everywhere. */
	@Test
	void everyStartUpCheckIsNeededOnSomeJobAndEveryPartOfAStartUpHasSome() {
		Set<String> needed = StarterRuns.outcomes().stream().flatMap(o -> o.startUp().stream()).filter(StartUpCheck::certain)
				.flatMap(c -> c.saidBy().stream()).map(r -> r.name()).collect(Collectors.toSet());
		assertEquals(List.of(), StarterRuns.EDITION.rules().stream().filter(r -> r.name().startsWith("Start-up: ")).map(r -> r.name())
				.filter(n -> !needed.contains(n)).toList());
		assertEquals(Set.of(StartUpPhase.values()), StarterRuns.outcomes().stream().flatMap(o -> o.startUp().stream())
				.filter(StartUpCheck::certain).map(StartUpCheck::phase).collect(Collectors.toSet()));
	}

	private static Set<Object> seen(FactKind kind, Field field) {
		return StarterRuns.outcomes().stream().map(Outcome::job).map(j -> j.entry(kind)).filter(e -> e.presence() == Job.Presence.PRESENT)
				.flatMap(e -> e.facts().stream()).flatMap((Fact f) -> kind.answer(f, field).value().stream()).map(Value::plain)
				.collect(Collectors.toSet());
	}
}
