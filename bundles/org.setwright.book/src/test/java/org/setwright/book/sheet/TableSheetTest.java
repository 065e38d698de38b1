package org.setwright.book.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setwright.book.Table;
import org.setwright.book.TableReader;

class TableSheetTest {
	private static final String TEXT = """
			# makers the shop meets
			outdoor unit maker , => changeover valve,authority,  source

			Norrvik,   energised in heating, "maker's instructions", "Sheet NV-12, ""old""\"
			# from here on measured
			  Larchwick,energised in cooling,observed on site,common practice
			Oskelund,,,
			""";

	@Test
	void cellsAreReadWhereverTheyStand() {
		TableSheet sheet = TableSheet.of(TEXT);
		assertEquals(List.of("outdoor unit maker", "=> changeover valve", "authority", "source"), sheet.headings());
		assertEquals(List.of("Norrvik", "energised in heating", "maker's instructions", "Sheet NV-12, \"old\""), sheet.row(0));
		assertEquals(List.of("Oskelund", "", "", ""), sheet.row(2));
		assertEquals(6, sheet.line(1));
		assertEquals(List.of(0, 0, 0, 1, 2), java.util.stream.Stream.of(1, 3, 12, 13, 34).map(at -> sheet.column(1, at)).toList());
		assertTrue(sheet.sound());
	}

	@Test
	void aChangedCellTouchesNothingElse() {
		assertEquals(TEXT.replace("energised in cooling", "energised in heating"), TableSheet.of(TEXT).with(1, 1, " energised in heating ").text());
		assertEquals(TEXT.replace("\"Sheet NV-12, \"\"old\"\"\"", "sheet"), TableSheet.of(TEXT).with(0, 3, "sheet").text());
		assertEquals(TEXT.replace("Oskelund,,,", "Oskelund,,,\"a, b\""), TableSheet.of(TEXT).with(2, 3, "a, b").text());
		assertEquals(TEXT.replace("  Larchwick", "  \"#1\""), TableSheet.of(TEXT).with(1, 0, "#1").text());
		TableSheet same = TableSheet.of(TEXT);
		assertSame(same, same.with(0, 0, "Norrvik"));
	}

	@Test
	void aRowTooShortGetsTheCommasItLacks() {
		assertEquals("a,b,c\n1,,3\n", TableSheet.of("a,b,c\n1\n").with(0, 2, "3").text());
		assertEquals("a,b\n1,2", TableSheet.of("a,b\n1").with(0, 1, "2").text());
	}

	@Test
	void rowsAreAddedAndTakenAway() {
		assertEquals("a,b\n0,0\n1,1\n", TableSheet.of("a,b\n1,1\n").withRow(-1, List.of("0", "0")).text());
		assertEquals("a,b\r\n1,1\r\n2,\"x,y\"", TableSheet.of("a,b\r\n1,1").withRow(0, List.of("2", "x,y")).text());
		assertEquals(TEXT.replace("  Larchwick,energised in cooling,observed on site,common practice\n", ""), TableSheet.of(TEXT).without(List.of(1)).text());
		assertEquals("a,b", TableSheet.of("a,b\r\n1,1").without(List.of(0)).text());
		assertEquals("a\n2\n", TableSheet.of("a\n1\n2\n3\n").without(List.of(0, 2, 0)).text());
	}

	@Test
	void rowsChangePlacesAndCommentsStay() {
		assertEquals("# h\na\n\n3\n# x\n1\n2\n", TableSheet.of("# h\na\n\n1\n# x\n2\n3\n").inOrder(List.of(2, 0, 1)).text());
		assertThrows(IllegalArgumentException.class, () -> TableSheet.of("a\n1\n2\n").inOrder(List.of(0, 0)));
	}

	@Test
	void cellsFromASpreadsheetAreTakenAndMissingRowsAdded() {
		TableSheet sheet = TableSheet.of("a,b,c\n1,2,3\n").pasted(0, 1, "x\t\"y\"\"y\r\nz\"\tbeyond\r\n4\t5, 6\r\n");
		assertEquals("a,b,c\n1,x,\"y\"\"y z\"\n,4,\"5, 6\"\n", sheet.text());
		assertEquals("a\n\"6\"\" pipe\"\n", TableSheet.of("a\n1\n").pasted(0, 0, "6\" pipe").text());
		assertEquals("a\n1\n", TableSheet.of("a\n1\n").pasted(1, 0, "\t\n \n").text());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "\n", "# only a comment", "a,b\n\"open", "a,b\n\"x\"y,2\n" })
	void whatCannotBeReadIsNotSound(String text) {
		assertFalse(TableSheet.of(text).sound());
		assertEquals(text, TableSheet.of(text).text());
	}

	static Stream<Path> starterTables() throws IOException {
		return Files.list(Path.of("../../rules/starter/tables")).sorted();
	}

	/** Whatever is done to a cell, the sheet and the reader of tables agree, and the lines of other rows stay. */
	@ParameterizedTest
	@MethodSource("starterTables")
	void randomChangesOfTheStarterTablesTouchTheirRowsAlone(Path file) throws IOException {
		Random random = new Random(file.toString().hashCode());
		TableSheet sheet = TableSheet.of(Files.readString(file));
		for (int i = 0; i < 60 && sheet.rows() > 0; i++) {
			int row = random.nextInt(sheet.rows());
			List<List<String>> expected = new ArrayList<>(cells(sheet));
			TableSheet before = sheet;
			switch (random.nextInt(4)) {
				case 0 -> {
					int column = random.nextInt(sheet.headings().size());
					String says = List.of("plain", "with, comma", "a \"quote\"", "#hash", "x").get(random.nextInt(5));
					List<String> changed = new ArrayList<>(expected.get(row));
					changed.set(column, says);
					expected.set(row, changed);
					sheet = sheet.with(row, column, says);
				}
				case 1 -> {
					List<String> added = new ArrayList<>(Collections.nCopies(sheet.headings().size(), "new, \"row\""));
					expected.add(row + 1, added);
					sheet = sheet.withRow(row, added);
				}
				case 2 -> {
					expected.remove(row);
					sheet = sheet.without(List.of(row));
				}
				default -> {
					List<Integer> order = new ArrayList<>(IntStream.range(0, sheet.rows()).boxed().toList());
					Collections.swap(order, row, random.nextInt(order.size()));
					expected = new ArrayList<>(order.stream().map(expected::get).toList());
					sheet = sheet.inOrder(order);
				}
			}
			assertEquals(expected, cells(sheet));
			assertTrue(sheet.rows() == 0 || read(sheet).equals(expected), sheet.text());
			List<String> kept = new ArrayList<>(sheet.text().lines().toList());
			long lost = before.text().lines().filter(line -> !kept.remove(line)).count();
			assertTrue(lost <= 1, before.text() + "\n->\n" + sheet.text());
		}
	}

	private static List<List<String>> cells(TableSheet sheet) {
		return IntStream.range(0, sheet.rows()).mapToObj(sheet::row).toList();
	}

	private static List<List<String>> read(TableSheet sheet) {
		return TableReader.read("tables/x.csv", sheet.text()).table().rows().stream().map(r -> r.cells().stream().map(Table.Cell::text).toList()).toList();
	}
}
