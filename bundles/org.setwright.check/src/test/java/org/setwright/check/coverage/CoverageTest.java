package org.setwright.check.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Book;
import org.setwright.book.BookReader;
import org.setwright.book.Floors.Figure;
import org.setwright.check.Progress;
import org.setwright.engine.Edition;
import org.setwright.trade.Trade;

/** What a handful of jobs try out of three rules, counted by hand. */
class CoverageTest {
	private static final String RULES = """
			rule "Default"
			    @authority( factory default )
			    @because( "Usual." )
			    @source( common practice )
			when
			    IndoorUnit( )
			then
			    propose( HEAT_STAGES, 1 );
			end

			rule "Two stage furnace"
			    @authority( shop practice )
			    @because( "It has two." )
			    @source( common practice )
			when
			    IndoorUnit( kind == FURNACE, stages >= 2 )
			    not Humidifier( )
			then
			    propose( HEAT_STAGES, 2 );
			end

			rule "Never"
			    @authority( shop practice )
			    @because( "It has three." )
			    @source( common practice )
			when
			    ( IndoorUnit( kind == BOILER ) or IndoorUnit( stages == 3 ) )
			then
			    propose( HEAT_STAGES, 3 );
			end
			""";

	@TempDir
	Path folder;
	private Coverage coverage;
	private Book book;

	@BeforeEach
	void run() throws IOException {
		Files.createDirectories(folder.resolve("rules"));
		Files.createDirectories(folder.resolve("jobs"));
		Files.writeString(folder.resolve("book.yaml"), "book: Test\nat least: { rules spoken: 60 %, mistakes caught: 12.5 % }\n");
		Files.writeString(folder.resolve("rules/test.drl"), RULES);
		job("a", "indoor unit: { kind: furnace, stages: 2 }\nnot fitted: everything else");
		job("b", "indoor unit: { kind: furnace, stages: 1 }\nnot fitted: everything else");
		job("c", "indoor unit: { kind: furnace, stages: 2 }\nhumidifier: { kind: bypass }");
		job("d", "indoor unit: { kind: furnace, stages: unknown }\nnot fitted: everything else");
		book = BookReader.read(folder, Trade.catalogue());
		assertEquals(List.of(), book.problems());
		Edition edition = Edition.compile(book).edition().orElseThrow();
		coverage = Coverage.of(edition, book.jobs(), Progress.UNWATCHED).orElseThrow();
	}

	@Test
	void everyRuleCountsTheJobsItDecidedWasOutrankedOnAndWasHeldOpenOn() {
		RuleCoverage usual = rule("Default");
		assertEquals(List.of("jobs/b.yaml", "jobs/c.yaml", "jobs/d.yaml"), usual.decided());
		assertEquals(List.of("jobs/a.yaml"), usual.outranked());
		assertEquals(0, usual.silent());
		RuleCoverage two = rule("Two stage furnace");
		assertEquals(List.of("jobs/a.yaml"), two.decided());
		assertEquals(2, two.silent());
		assertEquals(List.of("jobs/d.yaml"), two.heldOpen());
		assertEquals(0, rule("Never").spoke());
	}

	@Test
	void everyTestOfAConditionCountsWhereItHeldAndWhereItFailed() {
		List<ConditionCoverage> conditions = rule("Two stage furnace").conditions();
		assertEquals(List.of("1/0", "1/1", "1/1"), conditions.stream().map(c -> c.held() + "/" + c.failed()).toList());
		assertEquals(List.of(false, true, true), conditions.stream().map(ConditionCoverage::bothWays).toList());
		assertEquals(16, conditions.get(0).at().line());
		assertEquals(2, rule("Never").conditions().size());
		assertTrue(rule("Never").conditions().stream().allMatch(c -> c.held() == 0));
	}

	@Test
	void valuesNoJobCameToAreListed() {
		SettingCoverage stages = coverage.settings().get(0);
		assertEquals(Map.of("1", 3, "2", 1), stages.settled());
		assertTrue(stages.never().containsAll(List.of("0", "3")) && !stages.never().contains("2"), stages.never().toString());
	}

	@Test
	void theSharesAreThoseOfTheBookAndItsFloorsAreRead() {
		assertEquals(2 / 3.0, coverage.share(Figure.RULES_SPOKEN).orElseThrow(), 1e-9);
		assertEquals(Optional.empty(), coverage.share(Figure.MISTAKES_CAUGHT));
		assertEquals(Map.of(Figure.RULES_SPOKEN, 0.6, Figure.MISTAKES_CAUGHT, 0.125), book.floors().shares());
	}

	private RuleCoverage rule(String name) {
		return coverage.rules().stream().filter(r -> r.rule().name().equals(name)).findFirst().orElseThrow();
	}

	private void job(String name, String facts) throws IOException {
		Files.writeString(folder.resolve("jobs/" + name + ".yaml"), "job: " + name + "\n" + facts + "\n");
	}
}
