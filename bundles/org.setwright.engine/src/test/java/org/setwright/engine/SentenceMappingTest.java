package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.drools.drl.parser.lang.dsl.DSLTokenizedMappingFile;
import org.drools.drl.parser.lang.dsl.DefaultExpander;
import org.junit.jupiter.api.Test;
import org.setwright.book.Problem;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.Trade;

/**
 * Why rules are not written in sentences mapped by Drools: what the mapping makes of them does not always say what the
 * sentence says, and mistakes cannot be shown where they were made. Should one of these fail one day, look again.
 */
class SentenceMappingTest {
	private static final String SENTENCES = """
			[when]the outdoor unit is made by {name}=OutdoorUnit( maker == "{name}" )
			[when]the outdoor unit has {n} stages=OutdoorUnit( stages == {n} )
			[then]set cooling stages to {n}=propose( COOL_STAGES, {n} );
			[then]note that {text}=caution( NOTE, "{text}" );
			""";

	@Test
	void anHonestSentenceIsMapped() throws IOException {
		assertEquals(List.of(), problems(mapped("the outdoor unit has 2 stages", "set cooling stages to 2")));
	}

	@Test
	void whatIsWrittenInAGapCanWidenTheConditionUnseen() throws IOException {
		Rule rule = rule(mapped("the outdoor unit is made by Norrvik\" || maker == \"Larchwick", "set cooling stages to 2"));
		assertTrue(rule.when().toString().contains("AnyOf"), "the sentence names one maker, the rule takes two");
	}

	@Test
	void whatIsWrittenInAGapCanProposeMoreThanTheSentenceSays() throws IOException {
		Rule rule = rule(mapped("the outdoor unit has 2 stages", "set cooling stages to 1 ); propose( HEAT_STAGES, 2"));
		assertEquals(2, rule.proposals().size());
	}

	@Test
	void wordsWithinACautionAreTakenForASentenceAndReplaced() throws IOException {
		Rule rule = rule(mapped("the outdoor unit has 2 stages", "note that some people set cooling stages to 2"));
		assertEquals("some people propose( COOL_STAGES, 2 );", ((Action.Warn) rule.then().get(0)).sentence());
	}

	@Test
	void aMistakeInAGapIsShownWhereNobodyWroteIt() throws IOException {
		String sentence = "the outdoor unit has 9 stages";
		Problem problem = problems(mapped(sentence, "set cooling stages to 2")).get(0);
		assertTrue(problem.at().column() != 5 + sentence.indexOf('9'), problem.toString());
	}

	@Test
	void anUnknownSentenceIsReportedByItsLineAloneAndWithoutARemedy() throws IOException {
		DefaultExpander expander = expander();
		expander.expand(new StringReader(text("the outdoor unit has 2 stagse", "set cooling stages to 2")));
		assertEquals(List.of("[6] Unable to expand: the outdoor unit has 2 stagse"),
				expander.getErrors().stream().map(e -> e.getMessage().replaceFirst("^\\[+", "[").strip()).toList());
	}

	private static String mapped(String when, String then) throws IOException {
		return expander().expand(new StringReader(text(when, then)));
	}

	private static DefaultExpander expander() throws IOException {
		DSLTokenizedMappingFile file = new DSLTokenizedMappingFile();
		assertTrue(file.parseAndLoad(new StringReader(SENTENCES)));
		DefaultExpander expander = new DefaultExpander();
		expander.addDSLMapping(file.getMapping());
		return expander;
	}

	private static String text(String when, String then) {
		return Books.rule("r", "shop practice", when, then).replace("\t", "    ");
	}

	private static Rule rule(String text) {
		assertEquals(List.of(), problems(text));
		return RuleParser.parse("rules/x.drl", text, Trade.catalogue()).rules().get(0);
	}

	private static List<Problem> problems(String text) {
		return RuleParser.parse("rules/x.drl", text, Trade.catalogue()).problems();
	}
}
