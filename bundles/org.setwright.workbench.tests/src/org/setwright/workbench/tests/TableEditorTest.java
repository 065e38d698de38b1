package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.workbench.aloud.ReadAloudView;
import org.setwright.workbench.folder.Places;

@ExtendWith(NothingLogged.class)
class TableEditorTest {
	private static final String TABLE = "tables/changeover-by-maker.csv";
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), new Position(TABLE, 3, 1));
		Bench.worked();
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void aPlaceOpensItsRowAndTheRowIsReadAloud() throws Exception {
		assertEquals(List.of(1), Arrays.stream(rows().getSelectionIndices()).boxed().toList());
		Bench.page().showView(ReadAloudView.ID);
		Bench.worked();
		Text read = Bench.called("The rule read aloud", Text.class);
		assertTrue(read.getText().startsWith("If the outdoor unit's maker is Tamarack Air, set changeover valve to energised in cooling"), read.getText());
	}

	@Test
	void anAddedRowIsMarkedUntilItSaysSomethingAndGoesWithUndo() throws Exception {
		press("&Add Row");
		Bench.worked();
		assertEquals(3, rows().getItemCount());
		assertEquals("3   problem", rows().getItem(2).getText(0));
		assertEquals("maker's instructions", rows().getItem(2).getText(3));
		assertTrue(Bench.editor().isDirty());
		Bench.page().activate(Bench.editor());
		Bench.command("org.eclipse.ui.edit.undo");
		Bench.worked();
		assertEquals(2, rows().getItemCount());
		assertFalse(Bench.editor().isDirty());
	}

	@Test
	void rowsOfASpreadsheetArePastedAndTheOtherLinesStay() throws Exception {
		String before = Files.readString(folder.resolve(TABLE));
		Clipboard clipboard = new Clipboard(rows().getDisplay());
		clipboard.setContents(new Object[] { "Brackwater\tenergised in heating\tmaker's instructions\tbulletin 77, page 2\tIt says so.\r\n" },
				new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
		Bench.page().activate(Bench.editor());
		rows().setFocus();
		Waiting.settle();
		Bench.command("org.eclipse.ui.edit.paste");
		Bench.worked();
		Bench.editor().doSave(new NullProgressMonitor());
		Bench.worked();
		assertFalse(Bench.editor().isDirty());
		List<String> was = before.lines().toList();
		assertEquals(List.of(was.get(0), was.get(1), "Brackwater, energised in heating, maker's instructions, \"bulletin 77, page 2\", It says so."),
				Files.readString(folder.resolve(TABLE)).lines().toList());
		assertEquals("Brackwater", rows().getItem(1).getText(1));
	}

	@Test
	void aClickOnAHeadingSortsWhatIsShownAndTheFileOnlyWhenAsked() throws Exception {
		rows().getColumn(2).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
		assertEquals("Tamarack Air", rows().getItem(0).getText(1));
		assertFalse(Bench.editor().isDirty());
		press("&Keep This Order");
		Bench.worked();
		assertTrue(Bench.editor().isDirty());
		assertEquals("1", rows().getItem(0).getText(0).strip());
		assertEquals("Tamarack Air", rows().getItem(0).getText(1));
	}

	private static Table rows() {
		return Bench.called("Rows of the table", Table.class);
	}

	private static void press(String text) {
		Bench.all(Button.class, b -> b.getText().equals(text)).get(0).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}
}
