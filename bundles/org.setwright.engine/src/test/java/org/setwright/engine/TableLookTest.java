package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.Table;
import org.setwright.book.TableReader;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.tables.Heading;
import org.setwright.engine.tables.TableLook;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Value;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.house.Building;

/** What is said of a table without a job is true on jobs: rows that can meet meet, and holes are where no row speaks. */
class TableLookTest {
	private static final String HEAD = "outdoor unit kind,building floor area,=> cooling stages,authority,source\n";
	private static final String END = ",shop practice,x\n";

	@ParameterizedTest(name = "{0} beside {1}")
	@CsvSource(delimiter = ';', nullValues = "nothing", value = {
			"'air conditioner,,1,shop practice'; 'air-source heat pump,,2,shop practice'; nothing",
			"'air conditioner,,1,shop practice'; 'air conditioner or air-source heat pump,,2,shop practice'; DISPUTE",
			"'air conditioner,,1,shop practice'; ',,2,maker''s instructions'; OUTRANKS",
			"'air conditioner,,1,shop practice'; ',,1,shop practice'; AGREES",
			"'unknown,,1,shop practice'; 'air conditioner,,2,shop practice'; nothing", "'unknown,,1,shop practice'; ',,2,shop practice'; DISPUTE",
			"',<= 1000 ft2,1,shop practice'; ',> 1000 ft2,2,shop practice'; nothing",
			"',100 ft2..1000 ft2,1,shop practice'; ',1000 ft2..2000 ft2,2,shop practice'; DISPUTE",
			"',< 1000 ft2,1,shop practice'; ',92.9 m2,2,shop practice'; DISPUTE" })
	void rowsThatCanMeet(String one, String other, String sort) {
		TableLook look = look(HEAD + one + ",x\n" + other + ",x\n");
		assertEquals(List.of(), look.problems());
		assertEquals(Optional.ofNullable(sort), look.overlaps().stream().map(o -> o.sort().name()).findFirst());
	}

	@Test
	void holesAreSaidAndFilledByTheRowOffered() {
		TableLook look = look(HEAD + "air conditioner,< 1000 ft2,1" + END + "air-source heat pump,,1" + END + "ground-source heat pump,>= 500 ft2,1" + END);
		assertEquals("outdoor unit kind: ground-source heat pump; building floor area: below 500 ft2\n"
				+ "outdoor unit kind: air conditioner; building floor area: at least 1000 ft2", sentences(look));
		assertEquals(Optional.of(List.of("ground-source heat pump", "< 500 ft2", "", "", "")), look.holes().get(0).cells());
		assertEquals("", sentences(look(HEAD + ",,1" + END)));
	}

	@Test
	void whatEveryRowSaysIsWhatTheTableIsAbout() {
		assertEquals("", sentences(look("outdoor unit maker,outdoor unit kind,=> cooling stages,authority,source\nNorrvik,air conditioner,1" + END)));
		assertEquals("outdoor unit maker: any other", sentences(look(
				"outdoor unit maker,=> cooling stages,authority,source\nNorrvik,1" + END + "Oskelund,2" + END)));
	}

	@Test
	void severalWiresLeaveNothingCertain() {
		TableLook look = look("wire colour,=> cooling stages,authority,source\nred,1" + END + "blue,2" + END);
		assertEquals(List.of(), look.holes());
		assertTrue(look.remark().contains("wires"), look.remark());
		assertEquals(TableLook.Overlap.Sort.DISPUTE, look.overlaps().get(0).sort());
	}

	@Test
	void aFaultyRowIsLeftOutAndHolesWait() {
		TableLook look = look(HEAD + "air conditoner,,1" + END + "air conditioner,,1" + END + ",,2" + END);
		assertFalse(look.problems().isEmpty());
		assertEquals(List.of(), look.holes());
		assertEquals("Rows 2 and 3 can both hold on one job and differ about cooling stages: that is a dispute.", look.overlaps().get(0).sentence());
	}

	@Test
	void headingsSayWhatToWrite() {
		List<Heading> headings = look(HEAD + ",,1" + END).headings();
		assertEquals(List.of("", "unknown", "air conditioner", "air-source heat pump", "ground-source heat pump"), headings.get(0).choices());
		assertTrue(headings.get(1).meaning().contains("range"), headings.get(1).meaning());
		assertEquals(List.of("", "0", "1", "2"), headings.get(2).choices());
		assertFalse(headings.get(2).free());
		assertEquals(Heading.Sort.AUTHORITY, headings.get(3).sort());
		assertEquals(Heading.Sort.NOT_UNDERSTOOD, look("nothing,=> cooling stages\n").headings().get(0).sort());
	}

	/** The oracle is the rule engine itself, on every job that can be made of the values the table names and those between. */
	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16 })
	void randomTablesMeetAndLeaveHolesWhereJobsSaySo(long seed) {
		Random random = new Random(seed);
		List<String> kinds = List.of("", "air conditioner", "air-source heat pump", "air conditioner or ground-source heat pump", "unknown");
		List<String> areas = List.of("", "< 1000 ft2", ">= 1000 ft2", "500..1000 ft2", "> 2000 ft2", "500 ft2 or 2000 ft2", "unknown", "!= 1000 ft2");
		StringBuilder text = new StringBuilder(HEAD);
		for (int i = 0; i < 4; i++) {
			text.append(kinds.get(random.nextInt(kinds.size()))).append(',').append(areas.get(random.nextInt(areas.size()))).append(',').append(i % 3).append(END);
		}
		Table table = TableReader.read("tables/t.csv", text.toString()).table();
		TableLook look = TableLook.of(table, Trade.catalogue());
		Edition edition = Books.edition("", table);
		List<List<Integer>> speaking = jobs().stream().map(j -> edition.run(j).firings().stream().map(Firing::rule).map(r -> r.at().line() - 1).sorted().toList()).toList();
		assertEquals(pairs(speaking), look.overlaps().stream().map(o -> o.row() + "+" + o.other()).collect(Collectors.toSet()), text.toString());
		for (TableLook.Hole hole : look.holes()) {
			hole.cells().ifPresent(cells -> {
				Edition alone = Books.edition("", TableReader.read("tables/t.csv", HEAD + String.join(",", cells.subList(0, 2)) + ",1" + END).table());
				List<Job> there = jobs().stream().filter(j -> !alone.run(j).firings().isEmpty()).toList();
				assertFalse(there.isEmpty(), hole.sentence());
				there.forEach(j -> assertEquals(List.of(), List.copyOf(edition.run(j).firings()), hole.sentence() + "\n" + text));
			});
		}
		boolean apart = table.rows().stream().map(r -> r.cells().get(0).text()).distinct().count() > 1
				&& table.rows().stream().map(r -> r.cells().get(1).text()).distinct().count() > 1;
		if (apart && !text.toString().contains("unknown")) {
			boolean silent = jobs().stream().filter(TableLookTest::known).anyMatch(j -> edition.run(j).firings().isEmpty());
			assertEquals(silent, !look.holes().isEmpty(), text.toString());
		}
	}

	private static boolean known(Job job) {
		return job.entries().keySet().stream().filter(k -> k.name().equals("OutdoorUnit") || k.name().equals("Building"))
				.allMatch(k -> job.entry(k).facts().stream().anyMatch(f -> k.fields().stream().anyMatch(x -> k.answer(f, x).isKnown())));
	}

	private static Collection<String> pairs(List<List<Integer>> speaking) {
		Map<String, Boolean> pairs = new LinkedHashMap<>();
		speaking.forEach(rows -> rows.forEach(a -> rows.stream().filter(b -> b > a).forEach(b -> pairs.put(a + "+" + b, true))));
		return pairs.keySet();
	}

	/** Kinds and areas, known and not: the limits the tables name, and a place on either side of each. */
	private static List<Job> jobs() {
		FactKind outdoor = Trade.catalogue().kind(OutdoorUnit.class);
		FactKind building = Trade.catalogue().kind(Building.class);
		Field kind = outdoor.fieldLabelled("kind").orElseThrow();
		Field area = building.fieldLabelled("floor area").orElseThrow();
		List<Optional<Value>> kinds = new ArrayList<>(List.of(Optional.empty()));
		kind.domain().listed().forEach(v -> kinds.add(Optional.of(v)));
		List<Job> jobs = new ArrayList<>();
		for (Optional<Value> k : kinds) {
			for (String a : List.of("", "400 ft2", "500 ft2", "700 ft2", "1000 ft2", "1500 ft2", "2000 ft2", "3000 ft2")) {
				jobs.add(Job.blank().with(outdoor, Job.Entry.of(List.of(fact(outdoor, kind, k))))
						.with(building, Job.Entry.of(List.of(fact(building, area, area.domain().read(a))))));
			}
		}
		return jobs;
	}

	private static Fact fact(FactKind of, Field field, Optional<Value> value) {
		Map<Field, Value> known = new HashMap<>();
		value.ifPresent(v -> known.put(field, v));
		return of.create(known);
	}

	private static TableLook look(String text) {
		return TableLook.of(TableReader.read("tables/t.csv", text).table(), Trade.catalogue());
	}

	private static String sentences(TableLook look) {
		return look.holes().stream().map(TableLook.Hole::sentence).collect(Collectors.joining("\n"));
	}
}
