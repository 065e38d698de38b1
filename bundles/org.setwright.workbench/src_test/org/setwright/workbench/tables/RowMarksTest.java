package org.setwright.workbench.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.junit.jupiter.api.Test;
import org.setwright.book.sheet.TableSheet;
import org.setwright.trade.Trade;
import org.setwright.workbench.tables.RowMarks.Note;
import org.setwright.workbench.tables.RowMarks.Sort;

class RowMarksTest {
	private static final String TEXT = """
			# by hand
			outdoor unit maker,=> changeover valve,authority,source
			Norrvik,energised in heating,shop practice,sheet 1
			Norrvik or Oskelund,energised in cooling,shop practice,"sheet 2, page 3"
			Larchwick,energized,maker's instructions,x
			""";
	private final IDocument document = new Document(TEXT);
	private final TableDocument table = new TableDocument("tables/makers.csv", document, Trade::catalogue);

	@Test
	void rowsAndCellsCarryWhatIsToBeSaid() {
		RowMarks marks = table.marks();
		assertEquals("dispute with 2", marks.inShort(0));
		assertEquals(Optional.of(Sort.DISPUTE), marks.gravest(1));
		assertEquals("problem", marks.inShort(2));
		assertTrue(marks.cell(2, 1).get(0).startsWith("\"energized\" is not a value of changeover valve."), marks.cell(2, 1).toString());
		assertEquals(List.of(), marks.cell(0, 1));
		assertEquals(List.of(Sort.PROBLEM, Sort.DISPUTE), marks.notes().stream().map(Note::sort).toList());
	}

	@Test
	void holesShowOnceTheCellsAreSound() {
		table.write(2, 1, "energised in cooling");
		assertEquals(TEXT.replace("energized", "energised in cooling"), document.get());
		List<Note> holes = table.marks().notes().stream().filter(n -> n.sort() == Sort.HOLE).toList();
		assertEquals("No row takes: outdoor unit maker: any other.", holes.get(0).sentence());
	}

	@Test
	void aCellIsCheckedBeforeItIsTaken() {
		assertTrue(table.refusal(0, 1, "energised").startsWith("\"energised\" is not a value"), table.refusal(0, 1, "energised"));
		assertEquals("", table.refusal(0, 1, "energised in cooling"));
		assertEquals(TEXT, document.get());
	}

	@Test
	void whatFitsIsOfferedForTheLastPartAlone() {
		List<String> choices = List.of("", "unknown", "natural gas", "oil");
		assertEquals(List.of("natural gas or oil", "natural gas or unknown"), offered(choices, "natural gas or o"));
		assertEquals(List.of("unknown", "natural gas", "oil"), offered(choices, ""));
		assertEquals(List.of(), offered(choices, "oil"));
		assertEquals(List.of(), offered(choices, "< 3"));
	}

	private static List<String> offered(List<String> choices, String written) {
		return java.util.Arrays.stream(WrittenCell.proposals(choices, written)).map(org.eclipse.jface.fieldassist.IContentProposal::getContent).toList();
	}

	@Test
	void aScreenReaderIsToldTheCellAndWhatIsWrongWithIt() {
		assertEquals("outdoor unit maker, row 1: Norrvik.", SpokenCell.words(table, 0, 0));
		assertTrue(SpokenCell.words(table, 2, 1).startsWith("=> changeover valve, row 3: energized. \"energized\" is not a value"), SpokenCell.words(table, 2, 1));
		assertEquals("Row 1: dispute with 2.", SpokenCell.words(table, 0, -1));
	}

	@Test
	void aRowWhoseLastWordGoesGoesWithIt() {
		document.set("a,b\n1,\n2,2\n");
		table.write(0, 0, "");
		assertEquals("a,b\n2,2\n", document.get());
	}

	@Test
	void aNewRowTakesAuthorityAndSourceFromTheOneAbove() {
		assertEquals(List.of("", "", "shop practice", "sheet 2, page 3"), NewRow.of(table.sheet(), table.marks().headings(), 1, List.of()));
		assertEquals(List.of("Brackwater", "", "shop practice", "common practice"),
				NewRow.of(table.sheet(), table.marks().headings(), -1, List.of("Brackwater", "", "", "")));
	}

	@Test
	void rowsAreSortedByNumberOrByTheAlphabetAndEmptyOnesComeLast() {
		TableSheet sheet = TableSheet.of("a,b\n10 ft,x\n,z\n>= 9 ft,Y\nword,x\n-3 ft,\n");
		assertEquals(List.of(4, 2, 0, 3, 1), RowOrder.AS_WRITTEN.clicked(0).of(sheet));
		assertEquals(List.of(3, 0, 2, 4, 1), RowOrder.AS_WRITTEN.clicked(0).clicked(0).of(sheet));
		assertEquals(List.of(0, 3, 2, 1, 4), new RowOrder(1, false).of(sheet));
		assertEquals(RowOrder.AS_WRITTEN, RowOrder.AS_WRITTEN.clicked(0).clicked(0).clicked(0));
	}
}
