package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.TextInvocationContext;
import org.eclipse.ltk.core.refactoring.RefactoringCore;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.fixes.RuleAssist;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.Places;

/** A setting that nothing knows becomes one of the shop's own, by a key in the rule or from the File menu. */
@ExtendWith(NothingLogged.class)
class OwnSettingsTest {
	private static final String FILE = "rules/stages.drl";
	private static final String TITLE = "New Setting of the Shop\u2019s Own";
	private static final String RULE = "\nrule \"Turn the pump\"\n    @authority( shop practice )\n    @because( \"It seizes.\" )\n    @source( common practice )\n"
			+ "when\n    OutdoorUnit( )\nthen\n    propose( PUMP_EXERCISE, DAILY );\nend\n";
	@TempDir
	Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), Position.whole(FILE));
		Bench.worked();
	}

	@AfterEach
	void close() {
		Arrays.stream(Bench.window().getShell().getShells()).forEach(Shell::close);
		Bench.clear();
	}

	@Test
	void anUnknownSettingOfARuleIsAskedForWrittenAndKnownFromThenOn() throws Exception {
		document().set(document().get() + RULE);
		Bench.worked();
		assertFalse(Bench.desk().state().latest().orElseThrow().runs());
		Dialogs.whenOpen(TITLE, shell -> {
			assertEquals("pump exercise", Dialogs.text(shell, "Name").getText());
			assertEquals("daily", Dialogs.text(shell, "What may be set").getText());
			assertTrue(Dialogs.says(shell, "Say in a sentence what it does."));
			assertFalse(Dialogs.enabled(shell, "Add"));
			Dialogs.text(shell, "What it does").setText("Turns the pump.");
			Dialogs.text(shell, "What may be set").setText("off, daily");
			assertTrue(Dialogs.enabled(shell, "Add"));
			Dialogs.press(shell, "Add");
		});
		proposal("propose( PUMP_EXERCISE", "Make \"pump exercise\" a setting of the shop's own\u2026").apply(document());
		Waiting.until(() -> Bench.desk().state().latest().orElseThrow().runs(), "the rules to run again");
		assertEquals("settings:\n  - setting: pump exercise\n    meaning: Turns the pump.\n    values: [off, daily]\n", Files.readString(folder.resolve("settings.yaml")));
		Setting setting = Bench.desk().state().catalogue().setting("PUMP_EXERCISE").orElseThrow();
		assertTrue(Bench.desk().state().latest().orElseThrow().outcomes().values().stream().anyMatch(o -> o.setting(setting).isPresent()));
		RefactoringCore.getUndoManager().performUndo(null, new NullProgressMonitor());
		Waiting.until(() -> !Bench.desk().state().latest().orElseThrow().runs(), "the setting to be gone again");
		assertFalse(Files.exists(folder.resolve("settings.yaml")));
	}

	@Test
	void whatIsWrongIsSaidWhileItIsTypedAndNothingIsWritten() throws Exception {
		Dialogs.whenOpen(TITLE, shell -> {
			Dialogs.text(shell, "Name").setText("cooling stages");
			Dialogs.text(shell, "What it does").setText("Turns the pump.");
			Dialogs.text(shell, "What may be set").setText("0 to 4");
			assertTrue(Dialogs.says(shell, "There is already a setting \"cooling stages\"."));
			Dialogs.text(shell, "Name").setText("pump exercise");
			Combo need = combo(shell, "A job needs it");
			need.select(2);
			need.notifyListeners(SWT.Modify, new Event());
			Dialogs.text(shell, "Where").setText("OutdorUnit( )");
			assertTrue(Dialogs.says(shell, "OutdoorUnit"));
			assertFalse(Dialogs.enabled(shell, "Add"));
			Dialogs.press(shell, "Cancel");
		});
		Bench.command("org.setwright.workbench.newSetting");
		assertFalse(Files.exists(folder.resolve("settings.yaml")));
	}

	@Test
	void aValueThatIsNotListedIsAddedWithAKey() throws Exception {
		Files.writeString(folder.resolve("settings.yaml"), "settings:\n  - setting: pump exercise\n    meaning: Turns the pump.\n    values: [off]\n");
		BookProject.linked().orElseThrow().refreshLocal(IResource.DEPTH_INFINITE, null);
		Bench.worked();
		document().set(document().get() + RULE);
		Bench.worked();
		proposal("propose( PUMP_EXERCISE", "Add \"daily\" to the values of pump exercise").apply(document());
		Waiting.until(() -> Bench.desk().state().latest().orElseThrow().runs(), "the rules to run");
		assertTrue(Files.readString(folder.resolve("settings.yaml")).contains("values: [off, daily]"));
	}

	private static Combo combo(Shell shell, String name) {
		return Dialogs.combo(shell, name);
	}

	private static ICompletionProposal proposal(String word, String title) {
		ITextEditor editor = (ITextEditor) Bench.editor();
		ISourceViewer viewer = (ISourceViewer) editor.getAdapter(ITextOperationTarget.class);
		List<ICompletionProposal> offered = List.of(new RuleAssist().computeQuickAssistProposals(
				new TextInvocationContext(viewer, document().get().lastIndexOf(word) + 1, 0)));
		return offered.stream().filter(p -> p.getDisplayString().equals(title)).findFirst()
				.orElseThrow(() -> new AssertionError(offered.stream().map(ICompletionProposal::getDisplayString).toList().toString()));
	}

	private static IDocument document() {
		ITextEditor editor = (ITextEditor) Bench.editor();
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}
}
