package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.bench.keeping.Keeping;
import org.setwright.bench.keeping.NotKept;
import org.setwright.book.JobReader;
import org.setwright.engine.change.Watch;

/** What was tried is kept, or the file stays as it is. */
class KeepingTest {
	private static final String SLOWER = Sample.rule("Slower", "\"maker's instructions\"", "Pump( size == 1 )", "propose( SPEED, 0 );");
	private static final String BY_SIZE = Sample.rule("By size", "shop practice", "Pump( )", "propose( SPEED, 5 );");
	private final Session bench = Sample.bench();

	@Test
	void aTypedRuleGoesToTheEndOfAFileOrIntoANewOne() throws NotKept {
		Session session = Sample.after(bench, SLOWER);
		Keeping old = keeping(session, "keep rule in a");
		assertEquals("rules/a.drl", old.path());
		assertEquals(Sample.RULES + "\n" + SLOWER + "\n", old.edit().of(Optional.of(Sample.RULES)));
		Keeping fresh = keeping(session, "keep rule slower in rules/our-pumps.drl");
		assertEquals("rules/our-pumps.drl", fresh.path());
		assertEquals(SLOWER + "\n", fresh.edit().of(Optional.empty()));
		assertEquals("The rule \"Slower\" is kept in rules/our-pumps.drl.", fresh.done());
	}

	@Test
	void aRedefinedRuleTakesTheOldOnesPlaceInTheFileAsItIsNow() throws NotKept {
		String edited = "// somebody is typing here\n" + Sample.RULES;
		String kept = keeping(Sample.after(bench, BY_SIZE), "keep rule").edit().of(Optional.of(edited));
		assertTrue(kept.startsWith("// somebody is typing here\n// the shop's own\n" + BY_SIZE + "\n\nrule \"The alarm\""), kept);
		assertTrue(kept.endsWith("\"Stop it.\" ); end\n"), kept);
	}

	@Test
	void aFileWithErrorsStaysAsItIs() {
		Keeping keeping = keeping(Sample.after(bench, SLOWER), "keep rule in a");
		assertTrue(assertThrows(NotKept.class, () -> keeping.edit().of(Optional.of("rule \"half"))).getMessage().startsWith("rules/a.drl has errors, so it is not changed."));
	}

	@Test
	void aRuleThatNeedsAnotherOneIsNotKeptAlone() {
		Session session = Sample.after(bench, Sample.rule("Finds", "shop practice", "Pump( )", "find( NEW );"),
				Sample.rule("Asks", "shop practice", "Finding( name == NEW )", "propose( SPEED, 0 );"));
		Keeping keeping = keeping(session, "keep rule asks in a");
		assertTrue(assertThrows(NotKept.class, () -> keeping.edit().of(Optional.of(Sample.RULES))).getMessage().contains("NEW"));
		assertEquals("1:10 Several rules have been typed, and it is not said which to keep. Write one of: \"Finds\", \"Asks\".",
				Sample.misread(session, "keep rule"));
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "keep rule | 1:10 It is not said in which file to keep the rule. Write \"keep rule in FILE\", for example \"in rules/a.drl\".",
			"keep rule in ../x | 1:14 \"../x\" is no name for a file of rules. Write letters, digits and dashes, for example \"rules/a.drl\".",
			"keep rule red in a | 1:11 There is no rule called \"red\". Complete a part of the name to see what there is.",
			"keep job | 1:6 Nothing of the job has been changed here. State a fact first, or write \"keep job as NAME\" for a job of its own.",
			"keep expectations | 1:6 Nothing has been expected here. Write \"expect SETTING\" first.",
			"keep job as Weir 5 | 1:13 There is already a job called \"Weir 5\". Give it another name, or write \"keep job\" to change that of the job at hand.",
			"keep expectation speed | 1:18 The job's file expects 1 of speed, not 0. To take another outcome for right, accept it with your name and the reason (the word accept, or Case Check)." })
	void whatCannotBeKeptSaysWhy(String line, String expected) {
		assertEquals(expected, Sample.misread(Sample.after(bench, SLOWER), line));
	}

	@Test
	void noRuleMayRedefineATablesRow() {
		Session session = Sample.after(bench, Sample.rule("table lamps, row 1", "shop practice", "Lamp( )", "propose( COLOUR, RED );"));
		assertTrue(Sample.misread(session, "keep rule").contains("The rule it redefines is a row of tables/lamps.csv"));
	}

	@Test
	void changedFactsGoIntoTheJobsOwnFile() throws NotKept {
		Keeping keeping = keeping(Sample.after(bench, "pump size: 2", "hoses: add { paint: blue }", "expect alarm"), "keep job");
		assertEquals("jobs/0.yaml", keeping.path());
		assertEquals("job: Mill Lane 3 # by the river\npump: { size: 2, lift: 10 ft }\nhoses:\n  - { paint: red, length: 9 m }\n  - blue\nlamp: none\nexpect:\n  speed: 1\n  alarm: 62 °F\n",
				keeping.edit().of(Optional.of(Sample.JOB.replace("3\n", "3 # by the river\n").replaceFirst("(?s)size: 3", "size: 1"))));
		assertEquals("What was changed is kept in jobs/0.yaml. One thing it expects is not met.", keeping.done());
	}

	@Test
	void theJobAtHandBecomesAJobOfItsOwn() throws NotKept {
		Keeping keeping = keeping(Sample.after(bench, "pump size: 2", "expect nothing of speed", "expect alarm: 60 °F within 3 F°"),
				"keep job as \"Mühle 4: below\"");
		assertEquals("jobs/muhle-4-below.yaml", keeping.path());
		var read = JobReader.read(keeping.path(), keeping.edit().of(Optional.empty()), Sample.CATALOGUE);
		assertTrue(read.sound());
		assertEquals("Mühle 4: below", read.job().name());
		assertEquals("{alarm=60 °F within 3 F°}", read.job().expected().entrySet().stream()
				.collect(java.util.stream.Collectors.toMap(e -> e.getKey().label(), e -> e.getValue().text())).toString());
		assertThrows(NotKept.class, () -> keeping.edit().of(Optional.of("job: there\n")));
	}

	@Test
	void whatIsExpectedGoesIntoTheFileOnlyWhereTheFactsAreTheSame() throws NotKept {
		String kept = keeping(bench, "keep expectation alarm").edit().of(Optional.of(Sample.JOB));
		assertEquals(Sample.JOB + "  alarm: gap\n", kept);
		assertEquals(Sample.JOB + "  colour of light: not needed\n", keeping(Sample.after(bench, "expect colour of light"),
				"keep expectations").edit().of(Optional.of(Sample.JOB)));
		assertTrue(Sample.misread(Sample.after(bench, "pump size: 2"),
				"keep expectation alarm").startsWith("1:18 The facts here differ from those in the job's file"));
		assertTrue(Sample.misread(Sample.after(bench, Sample.rule("Z", "shop practice", "Pump( )", "propose( ALARM, \"9 °F\" );")),
				"keep expectation alarm")
				.startsWith("1:18 It comes to that only by a rule typed here"));
	}

	@Test
	void expectingSomethingShowsWhetherItIsMet() {
		assertEquals("NOT AS EXPECTED: alarm expected 60 °F, came to gap", Sample.told(bench, "expect alarm: 60 °F"));
		assertEquals("as expected: alarm came to gap, as expected", Sample.told(bench, "expect alarm"));
		assertEquals("Nothing else changes.", Sample.told(bench, "expect nothing of speed"));
	}

	@Test
	void cautionsStartUpChecksAndFindingsCanBeExpectedToo() throws NotKept {
		assertEquals("NOT AS EXPECTED: caution stop: heat expected raised, came to not raised", Sample.told(bench, "expect caution stop: heat"));
		assertEquals("as expected: no finding big came to not found, as expected", Sample.told(bench, "expect no finding big"));
		assertEquals("as expected: no start-up check fan: let it turn came to not needed, as expected", Sample.told(bench, "expect no start-up check fan: let it turn"));
		String kept = keeping(Sample.after(bench, "expect no caution any other"), "keep expectations").edit().of(Optional.of(Sample.JOB));
		assertTrue(kept.contains("no cautions:") && kept.contains("any other"), kept);
		assertEquals("1:16 There is no kind of caution \"stopp\". Write \"stop\".", Sample.misread(bench, "expect caution stopp: heat"));
		assertEquals("Nothing else changes.", Sample.told(Sample.after(bench, "expect finding big"), "expect nothing of finding big"));
	}

	@Test
	void scriptsAreWrittenAndReadByWhoeverShowsTheBench() {
		Session session = Sample.after(bench, "pump size: 2", "speed");
		assertEquals(Optional.of(new Wish.Save("a file.txt", "pump size: 2\nspeed\n")), session.say("save lines to \"a file.txt\"", Watch.PATIENT).wish());
		assertEquals(Optional.of(new Wish.Replay("x")), session.say("replay x", Watch.PATIENT).wish());
		assertEquals(Optional.of(new Wish.Leave()), session.say("leave", Watch.PATIENT).wish());
		assertTrue(Sample.misread(session, "replay").startsWith("1:7 The name of the file is missing."));
	}

	private static Keeping keeping(Session session, String line) {
		Turn turn = session.say(line, Watch.PATIENT);
		turn.misread().ifPresent(m -> {
			throw new AssertionError(m.what() + " " + m.remedy());
		});
		return ((Wish.Keep) turn.wish().orElseThrow()).keeping();
	}
}
