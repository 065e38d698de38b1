package org.setwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setwright.book.Position;
import org.setwright.book.Table;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.Job;

class TableTest {
	private static final String HEAD = "outdoor unit maker | => changeover valve | authority | source";

	private static Table table(String... lines) {
		List<Table.Row> rows = new ArrayList<>();
		for (int i = 1; i < lines.length; i++) {
			rows.add(new Table.Row(i, cells(lines[i], i + 1)));
		}
		return new Table("tables/makers.csv", "makers", cells(lines[0], 1), rows);
	}

	private static List<Table.Cell> cells(String line, int number) {
		List<Table.Cell> cells = new ArrayList<>();
		Arrays.stream(line.split("\\|", -1))
				.forEach(c -> cells.add(new Table.Cell(c.strip(), new Position("tables/makers.csv", number, cells.size() + 1))));
		return cells;
	}

	private static SettingOutcome valve(Table table, Job job) {
		return Books.edition("", table).run(job).setting(Trade.catalogue().setting("CHANGEOVER_VALVE").orElseThrow()).orElseThrow();
	}

	@Test
	void aRowIsARuleThatNamesItsPlace() {
		Proposal winner = valve(table(HEAD, "Norrvik | energised in heating | maker's instructions | sheet NV-12"),
				Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, maker=Norrvik")).deciding().get(0);
		assertEquals("table makers, row 1", winner.rule().name());
		assertEquals("tables/makers.csv:2:1", winner.rule().at().toString());
		assertEquals("sheet NV-12", winner.rule().source());
		assertEquals("energised in heating", winner.value().text());
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "501..1000 ft2 | 501 ft2 | true", "501..1000 ft2 | 1000 ft2 | true",
			"501..1000 ft2 | 1001 ft2 | false", "501..1000 ft2 | 92.9 m2 | true", "501..1000 ft2 | 93 m2 | false",
			"< 1,500 ft2 | 1499 ft2 | true", "< 1500 ft2 | 1500 ft2 | false", ">= 1500 ft2 | 1500 ft2 | true",
			"1500 ft2 or 2000 ft2 | 2000 ft2 | true", "!= 1500 ft2 | 1500 ft2 | false", "'' | 9999 ft2 | true", "- | 9999 ft2 | true" })
	void cellsSayWhichAnswersTheyTake(String cell, String area, boolean takes) {
		Table table = table("building floor area | => cooling stages | authority | source", cell + " | 1 | shop practice | common practice");
		assertEquals(takes ? 1 : 0, Books.edition("", table).run(Jobs.of("Building floorArea=" + area)).firings().size());
	}

	@Test
	void theWordUnknownAsksForAnUnknownAnswer() {
		Table table = table(HEAD, "unknown | energised in cooling | shop practice | common practice");
		assertTrue(valve(table, Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP")).value().isPresent());
		assertTrue(valve(table, Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, maker=Norrvik")).value().isEmpty());
	}

	@ParameterizedTest
	@CsvSource(delimiterString = "->", quoteCharacter = '~', value = {
			"outdoor unit makr | => changeover valve | authority | source -> tables/makers.csv:1:1: There is no fact \"outdoor unit makr\". Did you mean \"outdoor unit maker\"?",
			"outdoor unit maker | => changeover valv | authority | source -> tables/makers.csv:1:2: There is no setting \"changeover valv\". Did you mean \"changeover valve\"?",
			"outdoor unit maker | => changeover valve | source | source -> tables/makers.csv:1:4: The column \"source\" stands here twice. Delete one." })
	void slipsInTheHeader(String head, String problem) {
		assertEquals(problem, Books.compile("", table(head, "Norrvik | energised in heating | shop practice | x")).problems().get(0).toString());
	}

	@ParameterizedTest
	@CsvSource(delimiterString = "->", quoteCharacter = '~', value = {
			"Norrvik | energized in heating | shop practice | x -> tables/makers.csv:2:2: \"energized in heating\" is not a value of changeover valve. Write one of: energised in cooling, energised in heating.",
			"Norrvik | energised in heating | shop habit | x -> tables/makers.csv:2:3: \"shop habit\" is not an authority. Write one of: factory default, shop practice, maker's instructions, observed on site, code or safety.",
			"Norrvik | energised in heating | shop practice | -> tables/makers.csv:2:1: This row names no source. Write the document and place, or common practice, in the column source.",
			"Norrvik | | shop practice | x -> tables/makers.csv:2:1: This row proposes nothing. Fill in a column that begins with =>, or delete the row.",
			"< N | energised in heating | shop practice | x -> tables/makers.csv:2:1: maker has no order, so < makes no sense. Write some words on one line, at most 200 characters, or leave the cell empty." })
	void slipsInARow(String row, String problem) {
		Compilation compilation = Books.compile("", table(HEAD, row));
		assertEquals(problem, compilation.problems().get(0).toString());
		assertTrue(compilation.edition().isEmpty());
	}

	@Test
	void overlappingRowsThatDifferAreADispute() {
		Table table = table(HEAD, "Norrvik | energised in heating | shop practice | x", "Norrvik or Oskelund | energised in cooling | shop practice | x");
		assertEquals(SettingOutcome.State.DISPUTED,
				valve(table, Jobs.of("OutdoorUnit kind=AIR_SOURCE_HEAT_PUMP, maker=Norrvik")).state());
	}
}
