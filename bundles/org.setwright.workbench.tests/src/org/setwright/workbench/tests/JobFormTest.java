package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.trade.Trade;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.setup.SetupView;

@ExtendWith(NothingLogged.class)
class JobFormTest {
	private static final String JOB = "jobs/larch-lane-14.yaml";
	private static final FactKind OUTDOOR_UNIT = Trade.catalogue().kind("OutdoorUnit").orElseThrow();
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		Bench.page().showView(SetupView.ID);
		Places.openJob(Bench.page(), JOB, field("stages"));
		Bench.worked();
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void anotherAnswerChangesTheSettingAtOnceAndKeepsTheComment() throws Exception {
		choose("outdoor unit: stages", "2");
		Bench.worked();
		assertEquals("2   was 1", cooling());
		assertTrue(Bench.editor().isDirty());
		Bench.editor().doSave(new NullProgressMonitor());
		Bench.worked();
		String saved = Files.readString(folder.resolve(JOB));
		assertTrue(saved.contains("  stages: 2   # nameplate\n"), saved);
		assertTrue(saved.startsWith("# Seen on site, Tuesday.\n"), saved);
		assertEquals("2", cooling());
	}

	@Test
	void undoAndRedoGoThroughTheForm() throws Exception {
		choose("outdoor unit: stages", "2");
		Bench.page().activate(Bench.editor());
		Bench.command("org.eclipse.ui.edit.undo");
		Bench.worked();
		assertEquals("1", combo("outdoor unit: stages").getText());
		assertEquals("1", cooling());
		Bench.command("org.eclipse.ui.edit.redo");
		Bench.worked();
		assertEquals("2", combo("outdoor unit: stages").getText());
	}

	@Test
	void unknownIsAChoiceOfItsOwn() {
		assertEquals("unknown", combo("outdoor unit: stages").getItem(0));
		choose("outdoor unit: stages", "unknown");
		Bench.worked();
		assertTrue(cooling().startsWith("\u2013"), cooling());
	}

	@Test
	void aQuantityOfAnotherUnitIsExplainedAndNotTaken() {
		Text capacity = Bench.called("outdoor unit: cooling capacity at 95 °F", Text.class);
		capacity.setText("36000 cfm");
		capacity.notifyListeners(SWT.DefaultSelection, new Event());
		Waiting.settle();
		assertTrue(Bench.all(Label.class, l -> l.getText().contains("36000 cfm") && l.getText().contains("with its unit")).size() == 1);
		assertFalse(Bench.editor().isDirty());
		capacity.setText("3 ton");
		capacity.notifyListeners(SWT.DefaultSelection, new Event());
		Bench.worked();
		assertTrue(Bench.editor().isDirty());
	}

	@Test
	void thereIsNoneIsSaidAndTakenBack() {
		JobField anyAuxiliaryHeat = JobField.presence(Trade.catalogue().kind("AuxiliaryHeat").orElseThrow());
		Places.openJob(Bench.page(), JOB, anyAuxiliaryHeat);
		Waiting.settle();
		assertEquals("no, none", combo(anyAuxiliaryHeat.label()).getText());
		choose(anyAuxiliaryHeat.label(), "not known");
		Bench.worked();
		assertEquals("\u2013   was 0   expected 0", Bench.item(settings(), "auxiliary heat stages").getText(1));
	}

	@Test
	void aWireIsAddedAndTakenOut() {
		FactKind wire = Trade.catalogue().kind("Wire").orElseThrow();
		Places.openJob(Bench.page(), JOB, JobField.presence(wire));
		Waiting.settle();
		press("Add a wire");
		choose("wire: colour", "blue");
		Tree outline = Bench.called("Parts of the job", Tree.class);
		assertTrue(Bench.texts(outline).stream().anyMatch(t -> t.startsWith("wire 3, blue")), Bench.texts(outline).toString());
		Bench.pick(outline, Bench.texts(outline).stream().filter(t -> t.startsWith("wires")).findFirst().orElseThrow());
		press("Remove");
		assertTrue(Bench.texts(outline).stream().anyMatch(t -> t.startsWith("wire 1, orange")), Bench.texts(outline).toString());
	}

	@Test
	void anExpectationIsChanged() {
		Tree outline = Bench.called("Parts of the job", Tree.class);
		Bench.pick(outline, Bench.texts(outline).stream().filter(t -> t.startsWith("expected settings")).findFirst().orElseThrow());
		choose("expected changeover valve", "energised in cooling");
		Bench.worked();
		assertTrue(Bench.item(settings(), "changeover valve").getText(1).endsWith("expected energised in cooling"));
	}

	@Test
	void startUpChecksAndFindingsThatAreExpectedAreShownAndTakenOut() throws Exception {
		var text = ((Places.JobPlaces) Bench.editor()).showText();
		var document = text.getDocumentProvider().getDocument(text.getEditorInput());
		document.replace(document.getLength(), 0, "  no start-up: [heating]\n  no findings: dual fuel job\n");
		Places.openJob(Bench.page(), JOB, field("stages"));
		Bench.worked();
		Tree outline = Bench.called("Parts of the job", Tree.class);
		Bench.pick(outline, Bench.texts(outline).stream().filter(t -> t.startsWith("expected settings")).findFirst().orElseThrow());
		assertEquals("heating", Bench.called("expected heating", Text.class).getText());
		assertEquals(1, Bench.all(Label.class, l -> l.getText().equals("start-up check not needed")).size());
		assertEquals(1, Bench.all(Label.class, l -> l.getText().equals("rules do not find")).size());
		Bench.all(Button.class, b -> b.getText().equals("Remove")).get(2).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
		assertTrue(document.get().endsWith("auxiliary heat stages: 0\n  no findings: dual fuel job\n"), document.get());
	}

	@Test
	void aMistakeInTheTextIsExplainedAndTheFormWaits() throws Exception {
		var text = ((Places.JobPlaces) Bench.editor()).showText();
		var document = text.getDocumentProvider().getDocument(text.getEditorInput());
		document.replace(document.get().indexOf("stages: 1"), 9, "stages: x");
		Places.openJob(Bench.page(), JOB, field("stages"));
		Bench.worked();
		assertFalse(combo("outdoor unit: stages").isEnabled());
		assertEquals(1, Bench.all(Label.class, l -> l.getText().contains("changed on the page Text only")).size());
	}

	private static JobField field(String name) {
		return JobField.of(OUTDOOR_UNIT, 0, OUTDOOR_UNIT.field(name).orElseThrow());
	}

	private static Combo combo(String name) {
		return Bench.called(name, Combo.class);
	}

	private static void choose(String name, String choice) {
		Combo combo = combo(name);
		combo.setText(choice);
		assertEquals(choice, combo.getText(), "offered: " + String.join(", ", combo.getItems()));
		combo.notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private static void press(String text) {
		Bench.all(Button.class, b -> b.getText().equals(text)).get(0).notifyListeners(SWT.Selection, new Event());
		Waiting.settle();
	}

	private static String cooling() {
		return Bench.item(settings(), "cooling stages").getText(1);
	}

	private static Tree settings() {
		return Bench.called("Settings of the job", Tree.class);
	}
}
