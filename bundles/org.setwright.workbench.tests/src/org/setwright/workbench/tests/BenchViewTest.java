package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.workbench.bench.BenchView;
import org.setwright.workbench.folder.Places;

@ExtendWith(NothingLogged.class)
class BenchViewTest {
	private static final String RULE = "rule \"Try it\" @authority( code or safety ) @because( \"To see.\" ) @source( common practice )\n"
			+ "when OutdoorUnit( ) then propose( CHANGEOVER_VALVE, ENERGISED_IN_HEATING ); end";
	@TempDir
	private Path folder;
	private BenchView view;

	@BeforeEach
	void open() throws Exception {
		Bench.openTestBook(folder);
		view = (BenchView) Bench.page().showView(BenchView.ID);
		idle();
	}

	@AfterEach
	void close() {
		Bench.page().hideView(view);
		Bench.clear();
	}

	@Test
	void theJobPickedIsOnTheBenchAndAnotherOneFollowsWithTheRulesTried() {
		pick("jobs/quarry-hill-8.yaml");
		assertTrue(told().contains("on the bench: Quarry Hill 8"), told());
		say(RULE);
		pick("jobs/mill-road-3.yaml");
		assertTrue(told().contains("job mill-road-3\non the bench: Mill Road 3"), told());
		say("why changeover valve");
		assertTrue(told().contains("decided by \"Try it\" (code or safety)"), told());
	}

	@Test
	void aLineTypedAndEnteredShowsOnlyWhatChangedAndCanBeTakenBack() {
		pick("jobs/quarry-hill-8.yaml");
		type(RULE);
		assertTrue(told().contains("\nchangeover valve: energised in heating (was energised in cooling)\n"), told());
		assertFalse(told().contains("schedule"), "only what changed is told");
		action("Take Back").run();
		idle();
		assertTrue(told().contains("taken back: rule \"Try it\" ..."), told());
		action("Do Again").run();
		idle();
		assertTrue(told().contains("done again: rule \"Try it\" ..."), told());
	}

	@Test
	void aSlipIsToldWithItsPlaceAndARemedy() {
		say("outdoor unit stages: 9");
		assertTrue(told().contains("column 22, at \u201c9\u201d: \"9\" is out of bounds for stages.\nWrite a whole number"), told());
	}

	@Test
	void enterGoesOnWhileARuleHasNoEnd() {
		input().setText("rule \"half\"");
		input().setCaretOffset(11);
		key(SWT.CR, '\r');
		assertTrue(input().getText().startsWith("rule \"half\""), input().getText());
	}

	@Test
	void upAndDownCallLinesBack() {
		say("open");
		say("settled");
		key(SWT.ARROW_UP, '\0');
		assertEquals("settled", input().getText());
		key(SWT.ARROW_UP, '\0');
		assertEquals("open", input().getText());
		key(SWT.ARROW_DOWN, '\0');
		key(SWT.ARROW_DOWN, '\0');
		assertEquals("", input().getText());
	}

	@Test
	void aRuleIsKeptInANewFileAndSpeaksInTheBook() throws Exception {
		pick("jobs/quarry-hill-8.yaml");
		say(RULE);
		say("keep rule in trial");
		assertEquals(RULE + "\n", Files.readString(folder.resolve("rules/trial.drl")));
		Bench.worked();
		assertTrue(Bench.desk().state().edition().orElseThrow().rule("Try it").isPresent());
	}

	@Test
	void whatSomebodyIsTypingIsNotLost() throws Exception {
		Places.open(Bench.page(), new Position("rules/heat-pump.drl", 1, 1));
		ITextEditor editor = (ITextEditor) Bench.editor();
		var document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		document.replace(0, 0, "// being typed\n");
		Bench.worked();
		idle();
		String saved = Files.readString(folder.resolve("rules/heat-pump.drl"));
		say(RULE);
		say("keep rule in heat-pump");
		assertEquals(saved, Files.readString(folder.resolve("rules/heat-pump.drl")), "nothing is saved without being asked for");
		assertTrue(document.get().startsWith("// being typed\n") && document.get().endsWith(RULE + "\n"), document.get());
		assertTrue(told().contains("Somebody is typing in that file"), told());
		editor.doRevertToSaved();
		editor.doSave(new NullProgressMonitor());
	}

	@Test
	void whatWasPutOnTheBenchStaysThereWhenTheBookChanges() throws Exception {
		say("no job");
		Bench.desk().type("rules/heat-pump.drl", Files.readString(folder.resolve("rules/heat-pump.drl")) + "\n// more\n");
		idle();
		say("facts");
		assertTrue(told().contains("facts\nNothing is known of the job yet."), told());
	}

	@Test
	void whatWasSaidCanBeClearedAndWhatWasTriedStays() {
		pick("jobs/quarry-hill-8.yaml");
		say(RULE);
		action("Clear What Was Said").run();
		assertEquals("", told());
		say("changeover valve");
		assertTrue(told().contains("energised in heating"), told());
		assertFalse(action("Stop").isEnabled());
	}

	private void pick(String path) {
		Bench.desk().pickJob(path);
		idle();
	}

	private void say(String line) {
		type(line);
		idle();
	}

	/** Types {@code line} and presses enter. */
	private void type(String line) {
		input().setText(line);
		input().setCaretOffset(line.length());
		key(SWT.CR, '\r');
		idle();
	}

	private static void key(int code, char character) {
		Event event = new Event();
		event.keyCode = code;
		event.character = character;
		input().notifyListeners(org.eclipse.swt.custom.ST.VerifyKey, event);
		if (event.doit && character == '\r') {
			input().insert("\n");
		}
		Waiting.settle();
	}

	private void idle() {
		Bench.worked();
		Waiting.until(() -> !view.busy(), "the bench to be done");
		Waiting.settle();
	}

	private static StyledText input() {
		return Bench.called("Line to say", StyledText.class);
	}

	private static String told() {
		return Bench.called("What was said", StyledText.class).getText();
	}

	private IAction action(String text) {
		return Arrays.stream(view.getViewSite().getActionBars().getToolBarManager().getItems()).filter(ActionContributionItem.class::isInstance)
				.map(i -> ((ActionContributionItem) i).getAction()).filter(a -> a.getText().equals(text)).findFirst().orElseThrow();
	}
}
