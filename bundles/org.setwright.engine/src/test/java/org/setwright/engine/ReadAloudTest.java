package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.BookReader;
import org.setwright.engine.explaining.ReadAloud;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.language.Test.Among;
import org.setwright.engine.language.Test.Compare;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Value;

/** Rules and rows of tables are read aloud in whole sentences that say everything the rule says. */
class ReadAloudTest {
	private static final Path ACCEPTED = Path.of("src/test/resources/aloud/starter.txt");

	private static final List<String> LEFTOVERS = List.of("  ", "{", "}", "$", "null", " it's ", "they's", " the the ", " a a ", " a an ", " an a ", " to to ", "==",
			"UNKNOWN", " ,");

	@Test
	void theStarterBookReadsAsAccepted() throws IOException {
		String read = starter().map(r -> r.name() + "\n  " + String.join("\n  ", ReadAloud.of(r).sentences()) + "\n").collect(Collectors.joining("\n"));
		if ("yes".equals(System.getProperty("golden.accept"))) {
			Files.createDirectories(ACCEPTED.getParent());
			Files.writeString(ACCEPTED, read);
		}
		assertEquals(Files.readString(ACCEPTED), read, "not as accepted in " + ACCEPTED + "; -Dgolden.accept=yes accepts it");
	}

	@Test
	void everyValueAndEveryNameIsSaid() {
		assertEquals("", everyRule().flatMap(rule -> demanded(rule).stream().filter(said -> !ReadAloud.of(rule).text().contains(said))
				.map(said -> "does not say \"" + said + "\": " + ReadAloud.of(rule).text())).limit(5).collect(Collectors.joining("\n")));
	}

	@Test
	void isMadeOfSentencesWithoutLeftovers() {
		assertEquals("", everyRule().flatMap(rule -> ReadAloud.of(rule).sentences().stream())
				.filter(s -> !s.matches("(?s)[\\p{Lu}\\d\"].*[.!?]") || LEFTOVERS.stream().anyMatch(s::contains)).limit(5).collect(Collectors.joining("\n")));
	}

	@ParameterizedTest(name = "{1}")
	@CsvSource(delimiter = '|', textBlock = """
			OutdoorUnit( )                                             | If there is an outdoor unit, set cooling stages to 1
			OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP, maker == UNKNOWN ) | If the outdoor unit is an air-source heat pump and its maker is not known, set
			Building( bedrooms < 4, bedrooms >= 2 )                    | If the building has at least 2 and fewer than 4 bedrooms, set
			OutdoorUnit( maker matches "N.*" )                         | If the outdoor unit's maker reads like N.*, set
			OutdoorUnit( variableSpeed == UNKNOWN )                    | If it is not known whether the outdoor unit runs at variable speed, set
			Humidifier( controlledBy not in ( CONTROLLER, OWN_CONTROL ) ) | If the humidifier is not controlled by the controller or own control, set
			Wire( colour not in ( RED, BLUE ), gauge == "18 AWG" )     | If there is a wire that is neither red nor blue and that has a gauge of 18 AWG, set
			not Wire( colour == RED )                                  | If there is no wire that is red, set
			exists Wire( colour == RED )                               | If there is at least one wire that is red, set
			not ( OutdoorUnit( ) and Wire( colour == RED ) )           | If it is not so that both there is an outdoor unit and there is a wire that is red, set
			( not OutdoorUnit( ) or OutdoorUnit( stages == 1 ) )       | If either there is no outdoor unit or the outdoor unit has 1 stage, set
			not Building( bedrooms > 3 )                               | If it is not so that the building has more than 3 bedrooms, set
			$w : Wire( colour == RED ) Wire( gauge == $w.gauge )       | If there is a wire, call it wire A, that is red, and there is a wire whose gauge is wire A's gauge, set
			OutdoorUnit( kind == AIR_CONDITIONER && stages == 2 or else maker == "Norrvik" ) | If either both the outdoor unit is an air conditioner and it has 2 stages or its maker is Norrvik, set
			''                                                         | On every job set cooling stages to 1
			""")
	void everyFormOfConditionHasItsEnglish(String when, String read) {
		Rule rule = Books.edition(Books.rule("r", "shop practice", when.replace("or else", "||"), "propose( COOL_STAGES, 1 );")).rules().iterator().next();
		String text = ReadAloud.of(rule).text();
		assertTrue(text.startsWith(read), text);
	}

	@Test
	void everythingARuleDoesIsSaidInItsOrder() {
		Rule rule = Books.edition(Books.rule("r", "code or safety", "$u : OutdoorUnit( $s : stages )", "propose( COOL_STAGES, $s ); find( BIG_ONE ); "
				+ "caution( STOP, \"Stop here.\" ); startUp( COOLING, \"Call; entry {setting COOL_STAGES}.\", \"See {15..22 F°}\", \"Stop.\", \"Wait {$u.minimumOffTime}.\" );"))
				.rules().iterator().next();
		assertEquals(List.of(
				"If the outdoor unit's number of stages is known, set cooling stages to the outdoor unit's number of stages, find \"big one\", give a caution "
						+ "and make a check at start-up (code or safety). The reason: Testing.",
				"Caution, stop: Stop here.", "At start-up, cooling: Call; entry [what cooling stages comes to].", "What to see: See 15 to 22 F°.",
				"If not: Stop.", "Then wait: Wait [the outdoor unit's minimum off time].", "Source: common practice."), ReadAloud.of(rule).sentences());
	}

	private static Stream<Rule> starter() {
		return Edition.compile(BookReader.read(Path.of("../../rules/starter"), Trade.catalogue())).edition().orElseThrow().rules().stream();
	}

	private static Stream<Rule> everyRule() {
		return Stream.concat(starter(), LongStream.range(1, 7).boxed().flatMap(seed -> Books.edition(new RandomBooks(seed).rules(25)).rules().stream()));
	}

	/** Found by walking the rule, without the code under test. */
	private static List<String> demanded(Rule rule) {
		Stream<String> conditions = rule.when().stream().flatMap(ReadAloudTest::demanded);
		Stream<String> actions = rule.then().stream().flatMap(a -> a instanceof Action.Propose p
				? Stream.of(p.setting().label(), p.value() instanceof Operand.Literal l ? l.value().text() : "")
				: a instanceof Action.Warn w ? Stream.of(w.kind().label(), w.sentence())
				: a instanceof Action.Find f ? Stream.of(f.finding().toLowerCase().replace('_', ' ')) : Stream.of(((Action.StartUp) a).phase().label()));
		return Stream.of(conditions, actions, Stream.of(rule.authority().label(), rule.source(), rule.because().substring(1)))
				.flatMap(s -> s).filter(s -> !s.isEmpty()).toList();
	}

	private static Stream<String> demanded(Condition condition) {
		Stream<String> here = condition instanceof Condition.Pattern p ? Stream.concat(Stream.of(p.kind().label()), demanded(p.test()))
				: condition instanceof Condition.Found f ? Stream.of(f.finding().toLowerCase().replace('_', ' ')) : Stream.empty();
		return Stream.concat(here, condition.inner().stream().flatMap(ReadAloudTest::demanded));
	}

	private static Stream<String> demanded(org.setwright.engine.language.Test test) {
		if (test instanceof org.setwright.engine.language.Test.AllOf all) {
			return all.tests().stream().flatMap(ReadAloudTest::demanded);
		} else if (test instanceof org.setwright.engine.language.Test.AnyOf any) {
			return any.tests().stream().flatMap(ReadAloudTest::demanded);
		} else if (test instanceof Among among) {
			return among.values().stream().flatMap(ReadAloudTest::said);
		}
		return test instanceof Compare c && c.right() instanceof Operand.Literal l ? said(l.value()) : Stream.empty();
	}

	private static Stream<String> said(Value value) {
		return value instanceof Value.Flag ? Stream.empty() : Stream.of(value.text());
	}
}
