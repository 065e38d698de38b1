package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.setwright.engine.Books.rule;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.Problem;

/** What is refused, where, and in which words; nothing runs of a book that has any of it. */
class RefusalTest {
	private static final String ANY = "OutdoorUnit( )";
	private static final String SAYS = "propose( COOL_STAGES, 1 );";

	private static Problem only(String rules) {
		Compilation compilation = Books.compile(rules);
		assertTrue(compilation.edition().isEmpty(), "nothing runs");
		assertEquals(1, compilation.problems().size(), () -> compilation.problems().toString());
		return compilation.problems().get(0);
	}

	@ParameterizedTest
	@ValueSource(strings = { "System.exit(0);", "while (true) {}", "Runtime.getRuntime().exec(\"rm\");",
			"new Thread().start();", "insert( new Object() );", "drools.halt();", "java.lang.System.exit(0);",
			"propose( COOL_STAGES, System.exit(0) );", "propose( COOL_STAGES, new Integer(1) );", "for (;;) { }",
			"modify( $x ) { }", "{ }", "; System.exit(0);", "propose( COOL_STAGES, 1 ), System.exit(0);",
			"caution( NOTE, \"a\" + System.exit(0) );", "find( java.lang.System.exit(0) );" })
	void programCodeInAConsequence(String then) {
		Problem problem = only(rule("bad", "shop practice", ANY, then));
		assertEquals(8, problem.at().line(), problem.toString());
		assertTrue(problem.what().matches(".*(not something a rule can do|program code|Here should be).*"), problem.toString());
	}

	@ParameterizedTest
	@ValueSource(strings = { "eval( true )", "OutdoorUnit( eval( System.exit(0) == 0 ) )", "OutdoorUnit( stages.toString() == 1 )",
			"OutdoorUnit( getClass() == 1 )", "OutdoorUnit( ) from System.getenv()", "OutdoorUnit( this.stages == 1 )",
			"accumulate( OutdoorUnit( $s : stages ); $t : sum( $s ) )", "forall( OutdoorUnit( ) )", "java.lang.String( )",
			"String( )", "Object( )", "OutdoorUnit( stages == System.exit(0) )", "OutdoorUnit( stages == (1) )",
			"OutdoorUnit( ) over window:time( 5s )", "OutdoorUnit( stages == 1 ) or Humidifier( )", "?query( )",
			"OutdoorUnit( maker matches \"(a+)+b\" )", "OutdoorUnit( maker str[startsWith] \"N\" )" })
	void programCodeInACondition(String when) {
		Problem problem = only(rule("bad", "shop practice", when, SAYS));
		assertEquals(6, problem.at().line(), problem.toString());
		assertFalse(problem.remedy().isBlank());
	}

	@ParameterizedTest
	@ValueSource(strings = { "import java.io.*", "import java.io.File;", "package evil", "global java.util.List out",
			"function void f() { System.exit(0); }", "query q() end", "declare X end", "dialect \"java\"", "salience 10" })
	void whatStandsOutsideRules(String line) {
		Compilation compilation = Books.compile(line + "\n" + rule("good", "shop practice", ANY, SAYS));
		assertTrue(compilation.edition().isEmpty(), "nothing runs");
		assertEquals(1, compilation.problems().get(0).at().line());
		assertTrue(compilation.problems().get(0).what().startsWith("Here should begin a rule"), compilation.problems().toString());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
			"OutdorUnit( ) | There is no fact \"OutdorUnit\". Did you mean OutdoorUnit? | 2",
			"OutdoorUnit( stage == 1 ) | The outdoor unit has no field \"stage\". Did you mean stages? | 15",
			"OutdoorUnit( kind == AIR_SOURCE_HEATPUMP ) | \"AIR_SOURCE_HEATPUMP\" is not a value of kind of the outdoor unit. Did you mean AIR_SOURCE_HEAT_PUMP? | 23",
			"OutdoorUnit( kind == \"air-source heat pump\" ) | kind of the outdoor unit takes a word of the catalogue, not text in quotes. Write AIR_SOURCE_HEAT_PUMP without quotes. | 23",
			"OutdoorUnit( stages == 7 ) | 7 is not a value of stages of the outdoor unit. Write a whole number from 1 to 2. | 25",
			"OutdoorUnit( stages == two ) | two is not a value of stages of the outdoor unit. Write a whole number from 1 to 2. | 25",
			"OutdoorUnit( kind > AIR_CONDITIONER ) | kind has no order, so > makes no sense. Write == or != or in ( ... ). | 20",
			"Building( floorArea > 1500 ) | floor area of the building is a quantity, and 1500 has no unit. Write it in quotes with its unit: \"1500 ft2\". | 24",
			"OutdoorUnit( stages = 1 ) | Here should be a comparison, not =. Write == to compare. | 22",
			"OutdoorUnit( stages == null ) | There is no null in rule books. Write UNKNOWN. | 25",
			"OutdoorUnit( stages == $s ) | $s has not been given a meaning. Bind it in a pattern before: OutdoorUnit( $s : stages ). | 25",
			"Finding( name == NOWHERE ) | No rule finds NOWHERE, so this can never hold. Add a rule that says find( NOWHERE );. | 2" })
	void slipsOfThePen(String when, String message, int column) {
		Problem problem = only(rule("slip", "shop practice", when, SAYS));
		assertEquals(message, problem.what() + " " + problem.remedy());
		assertEquals(Books.FILE + ":6:" + column, problem.at().toString());
	}

	@Test
	void anUnknownValueOfAQuantityNamesTheUnits() {
		Problem problem = only(rule("slip", "shop practice", "Building( floorArea > \"1500 acres\" )", SAYS));
		assertEquals("Write a number with its unit (m2 or ft2) from 100 ft2 to 20000 ft2, in quotes.", problem.remedy());
	}

	@Test
	void aMissingEndIsBlamedOnTheRuleThatLacksItAndTheNextOneIsStillRead() {
		String broken = rule("first", "shop practice", ANY, SAYS).replace("end\n", "");
		Problem problem = only(broken + rule("second", "shop practice", ANY, SAYS));
		assertEquals("The rule before has no end. Write end on a line of its own before this.", problem.what() + " " + problem.remedy());
	}

	@Test
	void oneFaultDoesNotHideTheOthers() {
		Compilation compilation = Books.compile(rule("a", "shop practice", "OutdorUnit( )", SAYS)
				+ rule("b", "shop practice", "OutdoorUnit( stage == 1, kinds == X )", SAYS)
				+ rule("c", "shop practise", ANY, "propose( COOL_STAGE, 1 );"));
		assertEquals(Set.of(6, 16, 22, 28), Set.copyOf(compilation.problems().stream().map(p -> p.at().line()).toList()));
		assertEquals(5, compilation.problems().size(), () -> compilation.problems().toString());
	}

	@Test
	void reasonAuthorityAndSourceAreDemanded() {
		Compilation compilation = Books.compile("rule \"bare\" when OutdoorUnit( ) then propose( COOL_STAGES, 1 ); end");
		assertEquals(List.of("The rule \"bare\" has no @authority.", "The rule \"bare\" has no @because.",
				"The rule \"bare\" has no @source."), compilation.problems().stream().map(Problem::what).sorted().toList());
	}

	@Test
	void findingsMayNotGoRoundInACircle() {
		Compilation compilation = Books.compile(rule("a", "shop practice", "Finding( name == B )", "find( A );")
				+ rule("b", "shop practice", "not Finding( name == A )", "find( B );"));
		assertTrue(compilation.edition().isEmpty());
		assertTrue(compilation.problems().get(0).what().contains("depends on its own finding"), compilation.problems().toString());
	}

	@Test
	void twoRulesOfOneName() {
		Problem problem = only(rule("same", "shop practice", ANY, SAYS) + rule("same", "code or safety", ANY, SAYS));
		assertEquals(11, problem.at().line());
	}

	@Test
	void aBoundAnswerThatMayExceedTheSetting() {
		Problem problem = only(rule("wide", "shop practice", "IndoorUnit( $s : stages )", "propose( COOL_STAGES, $s );"));
		assertTrue(problem.what().contains("can be more than"), problem.toString());
	}

	@Test
	void aBoundAnswerWhoseLimitsAreTestedMayBeProposed() {
		Books.edition(rule("narrow", "shop practice", "IndoorUnit( $s : stages, stages <= 2 )", "propose( COOL_STAGES, $s );"));
	}

	@Test
	void tooManyPatternsOnListsWouldTakeForever() {
		Problem problem = only(rule("wide", "shop practice", "Wire( ) Wire( ) Wire( ) Wire( )", SAYS));
		assertTrue(problem.what().contains("lists"), problem.toString());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
			"startUp( COOLNG, \"a\", \"b\", \"c\" ); | There is no part of the start-up \"COOLNG\". Did you mean COOLING? | 11",
			"startUp( FAN, \"a\", \"b {$u.stagez}\", \"c\" ); | The outdoor unit has no field \"stagez\". Did you mean stages? | 28",
			"startUp( FAN, \"a\", \"b {$x}\", \"c\" ); | $x has not been given a meaning. Bind it in a pattern before: OutdoorUnit( $x : stages ). | 25",
			"startUp( FAN, \"a\", \"b {$u}\", \"c\" ); | $u is a whole fact, and a single answer is needed here. Add the field: $u.field. | 25",
			"startUp( FAN, \"a\", \"b\", \"c {setting CHANGEOVER}\" ); | There is no setting \"CHANGEOVER\". Look the word up in the catalogue. | 38",
			"startUp( FAN, \"a\", \"q\\\"q {20 parsecs}\", \"c\" ); | \"20 parsecs\" is nothing that can be read here. Between braces stands an answer {$name} or {$fact.field}, a quantity {20 F°} or {15..20 F°}, or {setting WORD}. | 28",
			"startUp( FAN, \"a\", \"b {20 F}\", \"c\" ); | \"20 F\" is nothing that can be read here. Between braces stands an answer {$name} or {$fact.field}, a quantity {20 F°} or {15..20 F°}, or {setting WORD}. | 25",
			"startUp( FAN, \"a\", \"b {20..15 F°}\", \"c\" ); | The range 20..15 F° does not go up. Write the smaller number first: {15..20 F°}. | 25",
			"startUp( FAN, \"a {\", \"b\", \"c\" ); | This brace is never closed. Between braces stands an answer {$name} or {$fact.field}, a quantity {20 F°} or {15..20 F°}, or {setting WORD}. | 19",
			"startUp( FAN, \"a\", \"}\", \"c\" ); | This brace was never opened. Between braces stands an answer {$name} or {$fact.field}, a quantity {20 F°} or {15..20 F°}, or {setting WORD}. | 22",
			"startUp( FAN, \"a\", \" \", \"c\" ); | The text that should say what to see is empty. Say it in a sentence a technician can follow. | 21",
			"startUp( FAN, \"a\", \"b\" ); | Here should be ,, not ). Write startUp( COOLING, \"what to call for\", \"what to see\", \"what it means if not\" );, with what to wait for as a fifth text. | 25" })
	void slipsInAStartUpCheck(String says, String message, int column) {
		Problem problem = only(rule("slip", "shop practice", "$u : OutdoorUnit( $s : stages )", says));
		assertEquals(message, problem.what() + " " + problem.remedy());
		assertEquals(Books.FILE + ":8:" + column, problem.at().toString());
	}

	@Test
	void aTextTooLongToBeReadIsRefusedAtOnce() {
		Problem problem = only(rule("long", "shop practice", ANY, "startUp( FAN, \"" + "{$x} ".repeat(200_000) + "\", \"b\", \"c\" );"));
		assertTrue(problem.what().startsWith("This text is longer than 600 characters"), problem.what());
	}
}
