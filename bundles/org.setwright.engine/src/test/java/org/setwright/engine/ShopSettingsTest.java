package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.Mend;
import org.setwright.book.Problem;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;

/** A book proposes, demands and expects settings of its own like those of the trade. */
class ShopSettingsTest {
	private static final String SETTINGS = """
			settings:
			  - setting: water panel reminder
			    meaning: How often somebody is reminded of the water panel.
			    values: [off, once a season]
			    needed: Humidifier( )
			""";
	private static final String RULE = """
			rule "Remind of the water panel"
				@authority( shop practice )
				@because( "A clogged panel dries the house." )
				@source( common practice )
			when
				Humidifier( controlledBy == CONTROLLER )
			then
				propose( WATER_PANEL_REMINDER, ONCE_A_SEASON );
			end
			""";
	private static final String JOB = "job: %s\nhumidifier: %s\nexpect:\n  water panel reminder: once a season\n";

	private static Book book(String settings, String rules) {
		Map<String, String> texts = new LinkedHashMap<>(Map.of("book.yaml", "book: Test\nformat: 1\n", "settings.yaml", settings, "rules/a.drl", rules,
				"tables/t.csv", "humidifier controlled by,=> water panel reminder,authority,source\nown control,off,shop practice,common practice\n",
				"jobs/a.yaml", JOB.formatted("a", "{ controlled by: controller }"), "jobs/b.yaml", JOB.formatted("b", "{ controlled by: own control }"),
				"jobs/c.yaml", JOB.formatted("c", "none"), "jobs/d.yaml", JOB.formatted("d", "fitted")));
		Map<String, byte[]> bytes = new LinkedHashMap<>();
		texts.forEach((path, text) -> bytes.put(path, text.getBytes(StandardCharsets.UTF_8)));
		return BookReader.read(Path.of("").toAbsolutePath(), bytes, Trade.catalogue());
	}

	private static Edition edition() {
		Compilation compilation = Edition.compile(book(SETTINGS, RULE));
		assertEquals(List.of(), compilation.problems());
		return compilation.edition().orElseThrow();
	}

	private static SettingOutcome outcome(String job) {
		Edition edition = edition();
		return edition.run(book(SETTINGS, RULE).job(job).orElseThrow().job()).setting(edition.catalogue().setting("WATER_PANEL_REMINDER").orElseThrow())
				.orElse(null);
	}

	private static List<String> problems(String settings, String rules) {
		return Edition.compile(book(settings, rules)).problems().stream().map(Problem::toString).toList();
	}

	@Test
	void aRuleSettlesIt() {
		assertEquals("once a season", outcome("a").value().orElseThrow().text());
		assertEquals("Remind of the water panel", outcome("a").deciding().get(0).rule().name());
	}

	@Test
	void aRowOfATableSettlesIt() {
		assertEquals("off", outcome("b").value().orElseThrow().text());
	}

	@Test
	void aJobThatDoesNotNeedItHasNone() {
		assertEquals(null, outcome("c"));
	}

	@Test
	void aJobThatNeedsItHasAGapWhereNoRuleSpeaks() {
		assertEquals(SettingOutcome.State.GAP, outcome("d").state());
	}

	@Test
	void faultyConditionsAreExplainedInTheirPlaceAndNothingRuns() {
		String settings = SETTINGS.replace("Humidifier( )", "Humidifer( )");
		assertTrue(problems(settings, RULE).stream().anyMatch(p -> p.startsWith("settings.yaml:5:13: ") && p.contains("Humidifier")), problems(settings, RULE).toString());
		assertTrue(Edition.compile(book(settings, RULE)).edition().isEmpty());
		String later = SETTINGS.replace("Humidifier( )", "Humidifier( controlledBy == CONTROLER )");
		assertTrue(problems(later, RULE).stream().anyMatch(p -> p.startsWith("settings.yaml:5:41: ") && p.contains("CONTROLLER")), problems(later, RULE).toString());
	}

	@Test
	void conditionsAloneStandThere() {
		for (String no : List.of("then", "Humidifier( ) then", "Humidifier( ) then propose( COOL_STAGES, 1 );", "Humidifier( ) end")) {
			assertTrue(Edition.compile(book(SETTINGS.replace("Humidifier( )", no), RULE)).edition().isEmpty(), no);
		}
	}

	@Test
	void aSlipInConditionsIsMendedInItsPlaceAndWhatIsMissingAtTheirEndIsOnlyTold() {
		String slip = SETTINGS.replace("Humidifier( )", "Humidifer( )");
		assertEquals(List.of(Optional.of(new Mend.Replace("Humidifer", List.of("Humidifier", "Dehumidifier")))), mends(slip));
		assertTrue(mends(SETTINGS.replace("Humidifier( )", "Humidifier(")).stream().allMatch(Optional::isEmpty));
	}

	private static List<Optional<Mend>> mends(String settings) {
		return Edition.compile(book(settings, RULE)).problems().stream().map(Problem::mend).toList();
	}

	@Test
	void aFindingCannotSayWhetherItIsNeeded() {
		String settings = SETTINGS.replace("Humidifier( )", "Finding( name == DRY )");
		assertTrue(problems(settings, RULE).stream().anyMatch(p -> p.startsWith("settings.yaml:5:13: ") && p.contains("A finding cannot say")),
				problems(settings, RULE).toString());
	}

	@Test
	void aValueThatIsNotListedIsRefused() {
		String rule = RULE.replace("ONCE_A_SEASON", "TWICE_A_SEASON");
		assertTrue(problems(SETTINGS, rule).stream().anyMatch(p -> p.startsWith("rules/a.drl:8:33") && p.contains("ONCE_A_SEASON")), problems(SETTINGS, rule).toString());
	}

	@Test
	void filesAreReadAgainOnlyWhenTheSettingsSayOtherThings() {
		Reading reading = Reading.of(book(SETTINGS, RULE));
		assertSame(reading.rules("rules/a.drl").get(0), reading.with(book(SETTINGS, RULE)).rules("rules/a.drl").get(0));
		Reading other = reading.with(book(SETTINGS.replace("[off,", "[never, off,"), RULE));
		assertNotSame(reading.rules("rules/a.drl").get(0), other.rules("rules/a.drl").get(0));
	}
}
