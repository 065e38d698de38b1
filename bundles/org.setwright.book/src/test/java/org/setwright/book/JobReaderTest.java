package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.setwright.book.Sample.Colour;
import org.setwright.book.Sample.House;
import org.setwright.book.Sample.Lamp;
import org.setwright.book.Sample.Pump;
import org.setwright.book.Sample.Tank;
import org.setwright.book.Sample.Wire;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.equipment.OutdoorUnit;

class JobReaderTest {
	private static final String PATH = "jobs/larch.yaml";
	private static final String FULL = """
			# a note of the person who wrote it
			Job: Larch Lane 14, upstairs
			notes: |
			  Attic is tight.
			  Ask for the ladder.
			pump: { Kind: Air-driven pump, maker: Norrvik, stages: 2, running heat: "48 kBtu/h", own fuse: yes, ratio: 1.5 }
			wires:
			  - { colour: red, gauge: 18 AWG, lands at: R }
			  - orange
			  - colour: unknown
			lamp: none
			house:
			  floor area: 1,500 ft2   # measured
			  coldest night: -5 °F
			not fitted: everything else
			expect:
			  pump speed: 2
			  lamp mode: not needed
			  Alarm Limit: gap
			""";

	@Test
	void readsEverySortOfAnswer() {
		JobText read = read(FULL);
		assertEquals(List.of(), read.problems());
		JobCase job = read.job();
		assertEquals("Larch Lane 14, upstairs", job.name());
		assertEquals("Attic is tight.\nAsk for the ladder.", job.notes());
		assertEquals(List.of(new Pump(Answer.of(Sample.PumpKind.AIR_DRIVEN_PUMP), Answer.of("Norrvik"), Answer.of(2),
				Answer.of(new Quantity(48, Unit.KBTU_PER_HOUR)), Answer.of(true), Answer.of(new Quantity(1.5, Unit.NONE)))), job.job().all(Pump.class));
		assertEquals(List.of(new Wire(Answer.of(Colour.RED), Answer.of(new Quantity(18, Unit.AWG)), Answer.of("R")),
				new Wire(Answer.of(Colour.ORANGE), Answer.unknown(), Answer.unknown()),
				new Wire(Answer.unknown(), Answer.unknown(), Answer.unknown())), job.job().all(Wire.class));
		assertEquals(new Quantity(1500, Unit.SQUARE_FOOT), job.job().one(House.class).orElseThrow().floorArea().value().orElseThrow());
		assertEquals(Job.Entry.NONE, job.job().entry(kind(Lamp.class)));
		assertEquals(Job.Entry.NONE, job.job().entry(kind(Tank.class)), "not fitted: everything else");
	}

	@Test
	void readsExpectationsInFileOrder() {
		JobCase job = read(FULL).job();
		assertEquals(List.of("pump speed 2", "lamp mode not needed", "alarm limit gap"),
				job.expected().entrySet().stream().map(e -> e.getKey().label() + " " + e.getValue().text()).toList());
		assertEquals(new Position(PATH, 17, 15), job.expected().values().iterator().next().at());
	}

	@Test
	void everyStatedAnswerKnowsItsPlace() {
		Map<JobField, Position> positions = read(FULL).job().positions();
		FactKind pump = kind(Pump.class);
		FactKind wire = kind(Wire.class);
		FactKind house = kind(House.class);
		assertEquals(at(6, "pump"), positions.get(JobField.presence(pump)));
		assertEquals(at(6, "Air-driven"), positions.get(JobField.of(pump, 0, pump.field("kind").orElseThrow())));
		assertEquals(at(6, "\"48 k"), positions.get(JobField.of(pump, 0, pump.field("runningHeat").orElseThrow())));
		assertEquals(at(8, "18 AWG"), positions.get(JobField.of(wire, 0, wire.field("gauge").orElseThrow())));
		assertEquals(at(9, "orange"), positions.get(JobField.of(wire, 1, wire.field("colour").orElseThrow())));
		assertEquals(at(10, "unknown"), positions.get(JobField.of(wire, 2, wire.field("colour").orElseThrow())));
		assertEquals(at(11, "lamp"), positions.get(JobField.presence(kind(Lamp.class))));
		assertEquals(at(14, "-5"), positions.get(JobField.of(house, 0, house.field("coldestNight").orElseThrow())));
		assertEquals(at(15, "everything"), positions.get(JobField.presence(kind(Tank.class))));
	}

	@Test
	void whatNobodySaidStaysUnknown() {
		JobText read = read("job: A\npump: unknown\nnot fitted: everything else\n");
		assertEquals(List.of(), read.problems());
		assertEquals(Job.Entry.UNKNOWN, read.job().job().entry(kind(Pump.class)), "stated to be unknown");
		assertEquals(Job.Entry.UNKNOWN, read.job().job().entry(kind(House.class)), "every job has a house");
		assertEquals(Job.Entry.UNKNOWN, read("job: A\n").job().job().entry(kind(Lamp.class)));
	}

	@Test
	void aKindCanBeFittedWithNothingElseKnown() {
		Fact nothingKnown = kind(Lamp.class).create(Map.of());
		assertEquals(List.of(nothingKnown), read("job: A\nlamp: fitted\n").job().job().entry(kind(Lamp.class)).facts());
		assertEquals(List.of(nothingKnown), read("job: A\nlamp: { }\n").job().job().entry(kind(Lamp.class)).facts());
	}

	@Test
	void windowsLineEndsAndByteOrderMarksAreTolerated() {
		JobText read = read("\uFEFF" + FULL.replace("\n", "\r\n"));
		assertEquals(List.of(), read.problems());
		assertEquals(read(FULL).job().job(), read.job().job());
		assertEquals(read(FULL).job().positions(), read.job().positions());
		assertEquals(read(FULL).job().notes(), read.job().notes());
	}

	@Test
	void readsJobsOfTheTrade() {
		JobText read = JobReader.read(PATH, """
				job: Larch Lane 14, upstairs
				outdoor unit: { kind: air-source heat pump, maker: Norrvik, stages: 1, valve energised in: unknown }
				expect: { changeover valve: energised in heating }
				""", Trade.catalogue());
		assertEquals(List.of(), read.problems());
		assertEquals(Answer.of(1), read.job().job().one(OutdoorUnit.class).orElseThrow().stages());
		assertTrue(read.sound());
	}

	private static JobText read(String text) {
		return JobReader.read(PATH, text, Sample.CATALOGUE);
	}

	private static Position at(int line, String snippet) {
		return new Position(PATH, line, FULL.lines().toList().get(line - 1).indexOf(snippet) + 1);
	}

	private static FactKind kind(Class<? extends Fact> type) {
		return Sample.CATALOGUE.kind(type);
	}
}
