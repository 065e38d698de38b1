package org.setwright.writing.uses;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.writing.Desk.rule;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.JobNotWritten;
import org.setwright.trade.Trade;
import org.setwright.writing.Desk;
import org.setwright.writing.Manuscript;

class UsesTest {
	private static final String RULES = rule("finds it", "$u : OutdoorUnit( maker == \"Norrvik\", $s : stages )", "find( TWO_STEP );\n    propose( COOL_STAGES, $u.stages );")
			+ rule("asks", "not Finding( name == TWO_STEP ) // TWO_STEP is not code here\n    OutdoorUnit( maker in ( \"Norrvik\", \"Oskelund\" ), kind == AIR_CONDITIONER )",
					"caution( NOTE, \"TWO_STEP Norrvik\" );\n    startUp( FAN, \"{setting COOL_STAGES}\", \"a\", \"b\" );");
	private static final String TABLE = "outdoor unit maker,=> changeover valve,authority,source\nNorrvik or Brackwater,energised in heating,shop practice,Norrvik sheet\n"
			+ "!= Norrvik,energised in cooling,shop practice,x\n";
	private static final String JOB = "job: A # Norrvik\noutdoor unit: { kind: air conditioner, maker: Norrvik } # two steps\nexpect:\n  cooling stages: { by: finds it }\n";

	private static Desk desk() {
		return Desk.with(RULES).and("tables/t.csv", TABLE).and("jobs/a.yaml", JOB).and("jobs/b.yaml", "job: B\noutdoor unit: { maker: Oskelund }\n");
	}

	private static Thing at(Desk desk, String word) {
		int offset = desk.text(Desk.FILE).indexOf(word);
		return Uses.at(desk.manuscript(), Desk.FILE, offset + 1).orElseThrow(() -> new AssertionError("nothing at " + word));
	}

	private static List<String> texts(Desk desk, List<Mention> mentions) {
		return mentions.stream().map(m -> m.path() + " " + desk.text(m.path()).substring(m.start(), m.end()) + (m.defines() ? " !" : "")).toList();
	}

	@Test
	void aFindingIsFoundWhereItIsMadeAndWhereItIsAskedForAndNotInComments() {
		assertEquals(List.of("rules/test.drl TWO_STEP !", "rules/test.drl TWO_STEP"), texts(desk(), Uses.in(desk().manuscript()).of(at(desk(), "TWO_STEP"))));
	}

	@Test
	void theShopsOwnWordsAreFoundInRulesTablesAndJobsOfThatFieldAlone() {
		assertEquals(List.of("jobs/a.yaml Norrvik", "rules/test.drl Norrvik", "rules/test.drl Norrvik", "tables/t.csv Norrvik", "tables/t.csv Norrvik"),
				texts(desk(), Uses.in(desk().manuscript()).of(at(desk(), "Norrvik"))));
	}

	@Test
	void settingsAreFoundWhereTheyAreProposedShownAndExpected() {
		List<Mention> mentions = Uses.in(desk().manuscript()).of(at(desk(), "COOL_STAGES"));
		assertEquals(List.of("jobs/a.yaml", "rules/test.drl", "rules/test.drl"), mentions.stream().map(Mention::path).toList());
		assertEquals(List.of("A", "finds it", "asks"), mentions.stream().map(Mention::where).toList());
	}

	@ParameterizedTest
	@CsvSource({ "OutdoorUnit, outdoor unit", "stages );, outdoor unit: stages", "kind ==, outdoor unit: kind" })
	void factsAndFieldsAreKnown(String word, String called) {
		assertEquals(called, at(desk(), word).called());
	}

	@Test
	void otherWordsStandForNothing() {
		Desk desk = desk();
		for (String word : List.of("when", "@because", "TWO_STEP is not", "TWO_STEP Norrvik")) {
			assertEquals(Optional.empty(), Uses.at(desk.manuscript(), Desk.FILE, desk.text(Desk.FILE).indexOf(word) + 2), word);
		}
	}

	private static Desk renamed(Desk desk, Thing thing, String name) throws JobNotWritten {
		Renaming renaming = new Renaming(desk.manuscript(), thing, Set.of());
		assertEquals(Optional.empty(), renaming.refusal());
		assertEquals(Optional.empty(), renaming.refusal(name));
		return desk.apply(renaming.edits(name));
	}

	@Test
	void aFindingIsRenamedEverywhereAndNothingElseIs() throws JobNotWritten {
		Desk desk = desk();
		renamed(desk, at(desk, "TWO_STEP"), "STEPPED");
		assertEquals(RULES.replace("find( TWO_STEP", "find( STEPPED").replace("== TWO_STEP", "== STEPPED"), desk.text(Desk.FILE));
		assertEquals(List.of(), desk.problems());
	}

	@Test
	void aMakerIsRenamedInRulesTablesAndJobs() throws JobNotWritten {
		Desk desk = desk();
		renamed(desk, at(desk, "Norrvik"), "O'Dell & Sons");
		assertEquals(RULES.replace("\"Norrvik\"", "\"O'Dell & Sons\""), desk.text(Desk.FILE));
		assertEquals(TABLE.replace("Norrvik or", "O'Dell & Sons or").replace("!= Norrvik", "!= O'Dell & Sons"), desk.text("tables/t.csv"));
		assertEquals(JOB.replace("maker: Norrvik", "maker: O'Dell & Sons"), desk.text("jobs/a.yaml"));
		assertEquals(List.of(), desk.problems());
	}

	@Test
	void aRuleIsRenamedWhereJobsNameItToo() throws JobNotWritten {
		Desk desk = desk();
		renamed(desk, at(desk, "finds it"), "decides it");
		assertTrue(desk.text(Desk.FILE).contains("rule \"decides it\""));
		assertEquals(JOB.replace("by: finds it", "by: decides it"), desk.text("jobs/a.yaml"));
	}

	@Test
	void whatJobsExpectOfFindingsAndStartUpsGoesAlong() throws JobNotWritten {
		String expects = "job: C\nexpect:\n  findings: [two step]\n  no findings: [any other]\n  start-up:\n    - by: asks\n";
		Desk desk = desk().and("jobs/c.yaml", expects);
		assertEquals(List.of("jobs/c.yaml", "rules/test.drl", "rules/test.drl"),
				Uses.in(desk.manuscript()).of(at(desk, "TWO_STEP")).stream().map(Mention::path).toList());
		renamed(desk, at(desk, "TWO_STEP"), "STEPPED_COOLING");
		renamed(desk, at(desk, "asks"), "wants");
		assertEquals(Set.of("stepped cooling", "any other", "by: wants"), Set.copyOf(desk.book().jobs().get(2).items().stream()
				.map(org.setwright.book.ExpectedItem::text).toList()), desk.text("jobs/c.yaml"));
		assertEquals(List.of(), desk.problems());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			Norrvik | Oskelund | the two would become one
			Norrvik | brackwater | the two would become one
			Norrvik | a, b | Keep to letters
			Norrvik | Norrvik or Oskelund | Keep to letters
			TWO_STEP | two_step | written in capitals
			TWO_STEP | UNKNOWN | means something else
			TWO_STEP | OTHER | the two would become one
			finds it | asks | already a rule
			""")
	void namesThatClashOrCannotBeReadAreRefused(String thing, String name, String why) {
		Desk desk = Desk.with(RULES + rule("other", "OutdoorUnit( )", "find( OTHER );")).and("tables/t.csv", TABLE).and("jobs/a.yaml", JOB);
		Optional<String> refusal = new Renaming(desk.manuscript(), at(desk, thing), Set.of()).refusal(name);
		assertTrue(refusal.orElse("").contains(why), refusal.toString());
	}

	@Test
	void whatTheCatalogueOrTheProgramNamesKeepsItsName() {
		Manuscript manuscript = desk().manuscript();
		assertTrue(new Renaming(manuscript, at(desk(), "COOL_STAGES"), Set.of()).refusal().orElseThrow().contains("catalogue"));
		assertTrue(new Renaming(manuscript, at(desk(), "TWO_STEP"), Set.of("TWO_STEP")).refusal().orElseThrow().contains("itself looks for"));
	}

	@Test
	void anExpressionThatHoldsForOneOfTheNamesIsPointedOut() {
		Desk desk = Desk.with(rule("m", "OutdoorUnit( maker == \"Norrvik\" ) OutdoorUnit( maker matches \"Norr.*\" )", "propose( COOL_STAGES, 1 );"));
		Renaming renaming = new Renaming(desk.manuscript(), at(desk, "Norrvik"), Set.of());
		assertEquals(1, renaming.warnings("Larchwick").size());
		assertEquals(List.of(), renaming.warnings("Norrland"));
	}

	@Test
	void everyMentionOfTheStarterBookCanBeFoundAgain() {
		var book = org.setwright.book.BookReader.read(java.nio.file.Path.of("../../rules/starter"), Trade.catalogue());
		Map<String, String> texts = new java.util.HashMap<>();
		Manuscript manuscript = new Manuscript(book, path -> Optional.of(texts.computeIfAbsent(path, p -> read(book.folder().resolve(p)))));
		List<Mention> mentions = Uses.in(manuscript).all();
		assertTrue(mentions.size() > 3000, "only " + mentions.size());
		for (Mention mention : mentions) {
			if (mention.thing() instanceof Thing.OfValue value) {
				assertEquals(value.value(), manuscript.text(mention.path()).substring(mention.start(), mention.end()), mention.toString());
			}
		}
	}

	private static String read(java.nio.file.Path file) {
		try {
			return java.nio.file.Files.readString(file);
		} catch (java.io.IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}
}
