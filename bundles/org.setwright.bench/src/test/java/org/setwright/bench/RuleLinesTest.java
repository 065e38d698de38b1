package org.setwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setwright.engine.Edition;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;

/** Rules that are typed, redefined and dropped. */
class RuleLinesTest {
	private static final String SLOWER = Sample.rule("Slower", "\"maker's instructions\"", "Pump( size == 1 )", "propose( SPEED, 0 );");
	private final Session bench = Sample.bench();

	@Test
	void aTypedRuleSpeaksAtOnceAndSaysWhatItChanges() {
		assertEquals("""
				"Slower" (maker's instructions): spoke
				  So it is.
				  source: common practice
				  The pump has 1 size.
				speed: 0 (was 1)
				  says "Slower" (maker's instructions)
				  outranks 1, which "By size" (shop practice) says
				NOT AS EXPECTED: speed expected 1, came to 0""", Sample.told(bench, SLOWER));
	}

	@Test
	void aTypedRuleThatIsOutrankedOrSilentSaysSo() {
		assertTrue(Sample.told(bench, SLOWER.replace("\"maker's instructions\"", "factory default"))
				.startsWith("\"Slower\" (factory default): outranked\n  outranked by \"By size\" (shop practice), which says speed 1"));
		String silent = Sample.told(bench, SLOWER.replace("size == 1", "size == 4"));
		assertEquals("\"Slower\" (maker's instructions): silent\n  The pump has 1 size; the rule wants that it has 4 size.\nNothing else changes.", silent);
	}

	@Test
	void theSameNameRedefinesARule() {
		Session twice = Sample.after(bench, SLOWER, SLOWER.replace("SPEED, 0", "SPEED, 7"));
		assertEquals("7", twice.hand().outcome().settings().get(0).value().orElseThrow().text());
		assertEquals(1, twice.hand().typed().size());
		Session ofTheBook = Sample.after(bench, Sample.rule("By size", "shop practice", "Pump( )", "propose( SPEED, 5 );"));
		assertEquals("speed: 5", Sample.told(ofTheBook, "speed").lines().findFirst().orElse(""));
		assertEquals(bench.hand().rules().size(), ofTheBook.hand().rules().size());
	}

	@Test
	void aDroppedRuleNoLongerSpeaks() {
		assertEquals("no longer in force here: \"By size\"\nspeed: GAP: needed, and no rule gives a value (was 1)\nNOT AS EXPECTED: speed expected 1, came to gap",
				Sample.told(bench, "drop by size"));
		assertTrue(Sample.misread(Sample.after(bench, "drop by size"), "drop by size").contains("There is no rule called \"by size\"."));
		assertEquals("1:6 The book cannot do without it: No rule finds BIG. Drop or redefine what asks for it first.",
				Sample.misread(bench, "drop The alarm")
				.replaceFirst("it: .*BIG[^.]*\\.", "it: No rule finds BIG."));
	}

	@Test
	void faultsPointIntoTheLinesTyped() {
		assertEquals("2:6 There is no fact \"Pomp\". Did you mean Pump?", Sample.misread(bench,
				"rule \"x\" @authority( shop practice ) @because( \"b\" ) @source( s )\nwhen Pomp( ) then propose( SPEED, 1 ); end"));
		assertTrue(Sample.misread(bench, Sample.rule("x", "shop practice", "Finding( name == NOBODY )", "propose( SPEED, 1 );")).contains("NOBODY"));
		assertEquals("1:8 The rule has no end. Write end on a line of its own after what it proposes.",
				Sample.misread(bench, "rule \"x").replace("1:9", "1:8"));
		assertTrue(Sample.misread(bench, SLOWER + " " + SLOWER.replace("Slower", "Other")).contains("One rule at a time"));
	}

	@Test
	void aRuleGoesOnUntilItsEnd() {
		assertTrue(Session.unfinished("rule \"x\""));
		assertTrue(Session.unfinished("rule \"the end\" // end\nwhen"));
		assertFalse(Session.unfinished(SLOWER));
		assertFalse(Session.unfinished("rules"));
		assertFalse(Session.unfinished("pump size: 2"));
	}

	@Test
	void savedJobsThatWouldChangeAreTold() {
		String everyPump = Sample.rule("Every pump", "code or safety", "Pump( size > 2 )", "propose( SPEED, 9 );");
		assertEquals("What was tried changes settings on 1 of 2 saved jobs.\nWeir 5\n  speed: 9 (was 3)",
				Sample.told(Sample.after(bench, everyPump), "other jobs"));
		assertEquals("1:1 No rule has been tried here yet. Type or drop a rule first.", Sample.misread(bench, "other jobs"));
	}

	@Test
	void whatIsShownIsWhatTheWholeBookCompiledAnewComesTo() {
		Session changed = Sample.after(bench, SLOWER, Sample.rule("Big at once", "shop practice", "Pump( size == 1 )", "find( BIG );"), "drop red");
		Edition whole = Sample.edition(Sample.RULES.replaceFirst("(?s)rule \"Red\".*?end\n", "") + "\n"
				+ String.join("\n", changed.changes().subList(0, 2)));
		assertEquals(said(whole.run(changed.hand().job().job())), said(changed.hand().outcome()));
	}

	private static List<String> said(Outcome outcome) {
		List<String> said = new java.util.ArrayList<>();
		outcome.settings().forEach(s -> said.add(s.setting().label() + s.state() + s.proposals().stream().map(RuleLinesTest::said).toList()));
		outcome.findings().forEach(f -> said.add(f.name()));
		outcome.startUp().forEach(c -> said.add(c.callFor().toString() + c.certain()));
		return said;
	}

	private static String said(Proposal proposal) {
		return proposal.rule().name() + " " + proposal.value().text();
	}
}
