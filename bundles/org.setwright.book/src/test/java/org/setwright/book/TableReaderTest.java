package org.setwright.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;

class TableReaderTest {
	private static final String PATH = "tables/a.csv";

	@Test
	void everyCellKnowsItsPlace() {
		TableText read = TableReader.read(PATH, """
				# by maker
				pump maker,  => pump speed,"because"

				Norrvik,     2,            "quiet, ""they
				say"" so"   , \t
				  # twice
				,3,
				""");
		assertEquals(List.of(), read.problems());
		assertEquals("a", read.table().name());
		assertEquals("2:1 pump maker|2:14 => pump speed|2:28 because", cells(read.table().header()));
		assertEquals(List.of("4:1 Norrvik|4:14 2|4:28 quiet, \"they\nsay\" so", "7:1 |7:2 3|7:4 "),
				read.table().rows().stream().map(r -> cells(r.cells())).toList());
		assertEquals(List.of(1, 2), read.table().rows().stream().map(Table.Row::number).toList());
	}

	@Test
	void windowsLineEndsAndByteOrderMarksAreTolerated() {
		String text = "a,=> b\n\"x\ny\",1\n";
		TableText read = TableReader.read(PATH, "\uFEFF" + text.replace("\n", "\r\n"));
		assertEquals(TableReader.read(PATH, text), read);
		assertEquals("2:1 x\ny|3:4 1", cells(read.table().rows().get(0).cells()));
	}

	@Test
	void linesOfNothingButCommasAreLeftOut() {
		TableText read = TableReader.read(PATH, "a,=> b,,\n1,2,,\n,,,\n3,4\n");
		assertEquals(List.of(), read.problems());
		assertEquals(List.of("2:1 1|2:3 2", "4:1 3|4:3 4"), read.table().rows().stream().map(r -> cells(r.cells())).toList());
	}

	@Test
	void rowsHaveAsManyCellsAsHeadings() {
		assertFaults("a,b,=> c\n1,2\n", "2:3: Row 1 has 2 cells, but there are 3 headings."
				+ " Add the missing commas, also for cells that are left empty.");
		assertFaults("a,=> c\n1,2\n3,4,5,6\n", "3:5: Row 2 has 4 cells, but there are only 2 headings."
				+ " Remove the extra cells; put a cell that holds a comma in quotes.");
	}

	@Test
	void headingsAreNamedAndDifferent() {
		assertFaults("a,,=> c\n1,2,3\n", "1:3: Column 2 has no heading."
				+ " Write which fact or setting the column is about, or remove the column.");
		assertFaults("a,=> c, A\n1,2,3\n", "1:9: The heading \"A\" stands on two columns. Make one column of the two.");
		assertFaults("a;=> c\n1;2\n", "1:1: The headings are not separated by commas."
				+ " Save the table as comma-separated values (CSV) with commas.");
		assertFaults("", "The table is empty."
				+ " Begin with a line of headings separated by commas, for example \"outdoor unit maker, => changeover valve\".");
		assertFaults("a,=> c\n", "The table has headings but no rows, so it says nothing. Add rows, or remove the file.");
	}

	@Test
	void quotesAreClosedAndAlone() {
		assertFaults("a,=> c\n1,\"2\n3,4\n", "2:3: The quote opened here is not closed. Add the closing quote at the end of the cell.");
		assertFaults("a,=> c\n\"1\" x,2\n", "2:5: Text stands between a closing quote and the next comma."
				+ " Put the whole cell in one pair of quotes, and write a quote inside it twice.");
	}

	@Test
	void readsTheSameCellsAsACsvLibrary() throws IOException {
		Random random = new Random(7);
		CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreSurroundingSpaces(true).setIgnoreEmptyLines(true).setTrim(true).get();
		for (int i = 0; i < 2000; i++) {
			String text = "h1,h2,h3\n" + rows(random);
			List<List<String>> library = new ArrayList<>();
			try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
				parser.forEach(row -> library.add(row.toList().stream().map(c -> c.replace("\r\n", "\n")).toList()));
			}
			library.removeIf(row -> row.stream().allMatch(String::isEmpty));
			List<List<String>> ours = new ArrayList<>();
			ours.add(List.of("h1", "h2", "h3"));
			TableReader.read(PATH, text).table().rows().forEach(r -> ours.add(r.cells().stream().map(Table.Cell::text).toList()));
			assertEquals(library, ours, text);
		}
	}

	private static String rows(Random random) {
		StringBuilder text = new StringBuilder();
		for (int row = random.nextInt(4); row >= 0; row--) {
			for (int cell = 0; cell < 3; cell++) {
				text.append(cell == 0 ? "" : ",").append(" ".repeat(random.nextInt(2))).append(cell(random)).append(" ".repeat(random.nextInt(2)));
			}
			text.append(random.nextBoolean() ? "\r\n" : "\n");
		}
		return text.toString();
	}

	private static String cell(Random random) {
		List<String> cells = List.of("", "x", ">= 1500 ft2", "it's 3 in", "\"a, b\"", "\"two\nlines\"", "\"say \"\"so\"\"\"", "\"\"", "35 °F", "\" kept \"");
		return cells.get(random.nextInt(cells.size()));
	}

	private static String cells(List<Table.Cell> cells) {
		return String.join("|", cells.stream().map(c -> c.at().line() + ":" + c.at().column() + " " + c.text()).toList());
	}

	private static void assertFaults(String text, String expected) {
		assertEquals(expected, String.join("\n", TableReader.read(PATH, text).problems().stream().map(Problem::toString)
				.map(p -> p.replace(PATH + ": ", "").replace(PATH + ":", "")).toList()));
	}
}
