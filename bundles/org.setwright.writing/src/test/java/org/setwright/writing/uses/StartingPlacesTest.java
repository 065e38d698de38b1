package org.setwright.writing.uses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.trade.Trade;
import org.setwright.writing.Desk;
import org.setwright.writing.Manuscript;

/** Finding out what a word stands for, wherever in the book it is pointed at. */
class StartingPlacesTest {
	private static final String TABLE = "tables/valve.csv";
	private static final String JOB = "jobs/a.yaml";
	private static final Desk DESK = Desk.with(rule("finds it", "OutdoorUnit( kind == AIR_CONDITIONER )", "find( TWO_STEP );\n    propose( SYSTEM_TYPE, COOLING_ONLY );"))
			.and(TABLE, """
					# by maker
					outdoor unit maker,outdoor unit kind,=> changeover valve,authority,source
					Norrvik or Norr,,energised in heating,shop practice,"sheet 1, page 2"
					"!= Norrvik",ground-source heat pump or air conditioner,energised in cooling,shop practice,x
					""")
			.and(JOB, """
					job: A  # a maker
					notes: maker and stages
					outdoor unit: { kind: air conditioner, maker: Norrvik, stages: 2 }
					wires: [red, { colour: blue, gauge: 18 AWG }]
					auxiliary heat: none
					not fitted: [humidifier, ventilator]
					expect:
					  cooling stages: { is: 2, by: "finds it" }
					  system type: cooling only
					  changeover valve: { by: table valve }
					  findings: [two step]
					  no findings: any other
					  start-up:
					    - by: finds it
					    - heating: something
					""");

	private static String at(String path, String before, String word) {
		String text = DESK.text(path);
		int start = text.indexOf(before);
		int offset = text.indexOf(word, start);
		assertTrue(start >= 0 && offset >= 0, "no " + word + " in " + path);
		return Uses.at(DESK.manuscript(), path, offset + word.length() / 2).map(Thing::called).orElse("nothing");
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			outdoor unit maker      | outdoor unit maker      | outdoor unit: maker
			outdoor unit kind       | outdoor unit kind       | outdoor unit: kind
			=> changeover           | changeover valve        | changeover valve (setting)
			Norrvik or Norr         | Norrvik                 | "Norrvik" (outdoor unit: maker)
			or Norr,                | Norr                    | "Norr" (outdoor unit: maker)
			,energised in heating   | ,                       | outdoor unit: kind
			,energised in heating   | energised               | "energised in heating" (changeover valve)
			"!= Norr                | Norrvik                 | "Norrvik" (outdoor unit: maker)
			"!= Norr                | !                       | outdoor unit: maker
			ground-source           | ground-source           | "ground-source heat pump" (outdoor unit: kind)
			or air conditioner      | air conditioner         | "air conditioner" (outdoor unit: kind)
			# by maker              | maker                   | nothing
			shop practice           | practice                | shop practice (authority)
			"sheet 1                | page                    | nothing
			""")
	void inATable(String before, String word, String called) {
		assertEquals(called, at(TABLE, before, word));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			job: A          | A                | nothing
			# a maker       | maker            | nothing
			notes           | stages           | nothing
			outdoor unit    | outdoor unit     | outdoor unit
			kind:           | kind             | outdoor unit: kind
			kind:           | air conditioner  | "air conditioner" (outdoor unit: kind)
			maker: N        | Norrvik          | "Norrvik" (outdoor unit: maker)
			stages: 2       | stages           | outdoor unit: stages
			stages: 2       | 2                | outdoor unit: stages
			wires           | wires            | wire
			[red            | red              | "red" (wire: colour)
			colour:         | blue             | "blue" (wire: colour)
			gauge           | 18 AWG           | wire: gauge
			auxiliary       | none             | auxiliary heat
			not fitted      | not fitted       | nothing
			humidifier, v   | ventilator       | ventilator
			cooling stages  | cooling stages   | cooling stages (setting)
			is: 2           | 2                | cooling stages (setting)
			by: "finds      | finds it         | rule "finds it"
			system type:    | cooling only     | "cooling only" (system type)
			by: table       | table valve      | rule "table valve"
			findings: [     | two step         | TWO_STEP (finding)
			no findings     | any other        | nothing
			- by            | finds it         | rule "finds it"
			- heating       | something        | nothing
			""")
	void inAJob(String before, String word, String called) {
		assertEquals(called, at(JOB, before, word));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
			-1 |  0 | outdoor unit: maker
			-1 |  2 | changeover valve (setting)
			-1 |  3 | nothing
			 0 |  0 | "Norrvik" (outdoor unit: maker)
			 0 |  1 | outdoor unit: kind
			 0 |  2 | "energised in heating" (changeover valve)
			 1 |  1 | "ground-source heat pump" (outdoor unit: kind)
			 1 |  3 | shop practice (authority)
			 1 |  4 | nothing
			 1 | -1 | nothing
			 7 |  0 | nothing
			""")
	void inACellOfTheGrid(int row, int column, String called) {
		assertEquals(called, Uses.inCell(DESK.manuscript(), TABLE, row, column).map(Thing::called).orElse("nothing"));
	}

	@Test
	void anAuthorityIsFoundInRulesAndRows() {
		Thing authority = Uses.at(DESK.manuscript(), Desk.FILE, DESK.text(Desk.FILE).indexOf("shop practice")).orElseThrow();
		assertEquals(List.of("finds it", "table valve, row 1", "table valve, row 2"),
				Uses.in(DESK.manuscript()).of(authority).stream().map(Mention::where).toList());
		assertTrue(new Renaming(DESK.manuscript(), authority, Set.of()).refusal().orElseThrow().contains("catalogue"));
	}

	@Test
	void aJobThatCannotBeReadAtPresentStandsForNothingAndNeverFails() {
		Desk broken = Desk.with("").and("jobs/x.yaml", "job: X\noutdoor unit: { kind: [\n");
		assertEquals(Optional.empty(), Uses.at(broken.manuscript(), "jobs/x.yaml", 12));
		assertEquals(Optional.empty(), Uses.at(broken.manuscript(), "jobs/none.yaml", 0));
		assertEquals(Optional.empty(), Uses.at(broken.manuscript(), "tables/none.csv", 3));
	}

	@Test
	void whatIsFoundFromATableOrAJobIsWhatIsFoundFromARule() {
		Thing fromRule = Uses.at(DESK.manuscript(), Desk.FILE, DESK.text(Desk.FILE).indexOf("AIR_COND") + 2).orElseThrow();
		Thing fromTable = Uses.at(DESK.manuscript(), TABLE, DESK.text(TABLE).indexOf("air cond")).orElseThrow();
		Thing fromJob = Uses.at(DESK.manuscript(), JOB, DESK.text(JOB).indexOf("air cond")).orElseThrow();
		assertEquals(fromRule, fromTable);
		assertEquals(fromRule, fromJob);
		assertEquals(List.of(JOB, Desk.FILE, TABLE), Uses.in(DESK.manuscript()).of(fromRule).stream().map(Mention::path).toList());
	}

	@Test
	void aTableThatAJobNamesIsFoundAndKeepsItsName() {
		Thing table = Uses.at(DESK.manuscript(), JOB, DESK.text(JOB).indexOf("table valve")).orElseThrow();
		assertEquals(List.of(TABLE), Uses.in(DESK.manuscript()).definitions(table).stream().map(Mention::path).toList());
		assertTrue(new Renaming(DESK.manuscript(), table, Set.of()).refusal().orElseThrow().contains("after its file"));
	}

	@Test
	void wordsOfTheCatalogueCannotBeRenamedFromAnywhere() {
		for (String word : List.of("air conditioner", "cooling only", "kind:", "wires", "cooling stages")) {
			Thing thing = Uses.at(DESK.manuscript(), JOB, DESK.text(JOB).indexOf(word)).orElseThrow();
			assertTrue(new Renaming(DESK.manuscript(), thing, Set.of()).refusal().orElseThrow().contains("catalogue"), word);
		}
	}

	@Test
	void aMakerThatBeginsAsAnotherIsFoundAtItsOwnPlace() {
		Thing norr = new Thing.OfValue(Trade.catalogue().kind("OutdoorUnit").orElseThrow(),
				Trade.catalogue().kind("OutdoorUnit").orElseThrow().field("maker").orElseThrow(), "Norr");
		assertEquals(List.of(DESK.text(TABLE).indexOf("Norr,")), Uses.in(DESK.manuscript()).of(norr).stream().map(Mention::start).toList());
	}

	@Test
	void usesOfASettingOfTheStarterBookAreRulesTableColumnsAndTheJobsThatExpectIt() {
		Manuscript starter = starter();
		Set<String> tables = starter.book().tables().stream().filter(t -> starter.text(t.path()).lines().anyMatch(l -> l.contains("=> changeover valve")))
				.map(t -> t.path()).collect(Collectors.toSet());
		Set<String> jobs = starter.book().jobs().stream().filter(j -> starter.text(j.path()).contains("\n  changeover valve:")).map(j -> j.path())
				.collect(Collectors.toSet());
		Set<String> rules = starter.book().ruleFiles().stream().filter(r -> r.text().contains("CHANGEOVER_VALVE")).map(r -> r.path()).collect(Collectors.toSet());
		assertTrue(!tables.isEmpty() && jobs.size() > 2 && !rules.isEmpty());
		Set<String> found = Uses.in(starter).of(new Thing.OfSetting(Trade.catalogue().setting("CHANGEOVER_VALVE").orElseThrow())).stream()
				.map(Mention::path).collect(Collectors.toSet());
		tables.addAll(jobs);
		tables.addAll(rules);
		assertEquals(tables, found);
	}

	/** Pointing at a place where something is used tells that same thing. */
	@Test
	void everyUseInTheTablesAndJobsOfTheStarterBookLeadsBackToWhatItUses() {
		Manuscript starter = starter();
		List<Mention> values = Uses.in(starter).all().stream().filter(m -> !m.path().startsWith("rules/"))
				.filter(m -> m.thing() instanceof Thing.OfValue || m.thing() instanceof Thing.OfChoice || m.thing() instanceof Thing.OfSettingChoice).toList();
		assertTrue(values.size() > 1000, "only " + values.size());
		for (Mention mention : values.subList(0, values.size() / 8)) {
			assertEquals(Optional.of(mention.thing()), Uses.at(starter, mention.path(), mention.start() + 1), mention.toString());
		}
	}

	private static Manuscript starter() {
		Book book = BookReader.read(Path.of("../../rules/starter"), Trade.catalogue());
		Map<String, String> texts = new ConcurrentHashMap<>();
		return new Manuscript(book, path -> Optional.of(texts.computeIfAbsent(path, p -> read(book.folder().resolve(p)))));
	}

	private static String read(Path file) {
		try {
			return Files.readString(file);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
