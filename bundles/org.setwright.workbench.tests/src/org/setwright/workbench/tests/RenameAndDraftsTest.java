package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ltk.core.refactoring.PerformRefactoringOperation;
import org.eclipse.ltk.core.refactoring.CheckConditionsOperation;
import org.eclipse.ltk.core.refactoring.RefactoringCore;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;
import org.setwright.book.Position;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.uses.RenameEverywhere;
import org.setwright.writing.uses.Renaming;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Renaming across the book, and texts that outlive a crash. */
@ExtendWith(NothingLogged.class)
class RenameAndDraftsTest {
	private static final String FILE = "rules/heat-pump.drl";
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void aMakerIsRenamedInEveryFileAndTheWholeOfItUndone() throws Exception {
		Places.open(Bench.page(), Position.whole("tables/changeover-by-maker.csv"));
		Bench.worked();
		String table = Files.readString(folder.resolve("tables/changeover-by-maker.csv"));
		String job = Files.readString(folder.resolve("jobs/larch-lane-14.yaml"));
		RenameEverywhere rename = rename(maker("Norrvik"));
		assertFalse(rename.name("Nordvik").hasFatalError());
		ResourcesPlugin.getWorkspace().run(new PerformRefactoringOperation(rename, CheckConditionsOperation.ALL_CONDITIONS), new NullProgressMonitor());
		Bench.worked();
		assertEquals(job.replace("Norrvik", "Nordvik"), BookTexts.text("jobs/larch-lane-14.yaml").orElseThrow());
		assertEquals(table.replaceFirst("Norrvik", "Nordvik"), BookTexts.text("tables/changeover-by-maker.csv").orElseThrow());
		assertEquals(List.of(), Bench.desk().state().latest().orElseThrow().problems());
		press("OK"); // the platform asks, because files outside of the editor are concerned
		RefactoringCore.getUndoManager().performUndo(null, new NullProgressMonitor());
		Bench.worked();
		assertEquals(job, BookTexts.text("jobs/larch-lane-14.yaml").orElseThrow());
		assertEquals(table, BookTexts.text("tables/changeover-by-maker.csv").orElseThrow());
	}

	@Test
	void aNameThatClashesIsRefusedAndNothingIsChanged() throws Exception {
		assertTrue(rename(maker("Norrvik")).name("Tamarack Air").hasFatalError());
		assertTrue(rename(new Thing.OfFinding("DUAL_FUEL_JOB")).name("dual fuel").hasFatalError());
		assertTrue(new Renaming(BookTexts.manuscript(Bench.desk().state()).orElseThrow(), new Thing.OfFinding("X"), Set.of("X")).refusal().isPresent());
	}

	@Test
	void whatWasTypedBeforeACrashIsPutBackWhenTheBookIsOpened() throws Exception {
		String typed = typeAndWaitForTheDraft();
		Path draft = drafts().get(0);
		byte[] left = Files.readAllBytes(draft);
		Bench.page().closeAllEditors(false);
		Waiting.until(() -> drafts().isEmpty(), "the draft to be forgotten when it is given up");
		Bench.desk().close();
		Files.write(draft, left);
		press("Put It Back");
		Bench.open(folder);
		Waiting.until(() -> BookTexts.text(FILE).equals(Optional.of(typed)), "the text to be put back");
		assertTrue(Bench.page().getDirtyEditors().length == 1, "it is not saved");
		assertFalse(Files.readString(folder.resolve(FILE)).equals(typed));
	}

	@Test
	void whatIsSavedIsNoDraftAnyMore() throws Exception {
		typeAndWaitForTheDraft();
		Bench.page().saveAllEditors(false);
		Waiting.until(() -> drafts().isEmpty(), "the draft to be forgotten");
	}

	private String typeAndWaitForTheDraft() throws Exception {
		Places.open(Bench.page(), Position.whole(FILE));
		Bench.worked();
		ITextEditor editor = (ITextEditor) Bench.editor();
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		document.replace(0, 0, "rule \"half-written");
		Waiting.until(() -> drafts().size() == 1, "the draft to be kept");
		return document.get();
	}

	/** Presses a button of the dialog that opens next. */
	private static void press(String text) {
		Display display = Display.getCurrent();
		display.timerExec(200, new Runnable() {
			private int looked;

			@Override
			public void run() {
				for (Shell shell : display.getShells()) {
					Optional<Button> button = button(shell, text);
					if (button.isPresent()) {
						button.get().notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
						return;
					}
				}
				if (looked++ < 200) {
					display.timerExec(100, this);
				}
			}
		});
	}

	private static Optional<Button> button(Control control, String text) {
		if (control instanceof Button button && button.getText().equals(text)) {
			return Optional.of(button);
		}
		return control instanceof Composite parent ? Stream.of(parent.getChildren()).flatMap(c -> button(c, text).stream()).findFirst() : Optional.empty();
	}

	/** @return the drafts of this book; other books have theirs in the same place */
	private List<Path> drafts() {
		Path notes = Path.of(Platform.getStateLocation(FrameworkUtil.getBundle(Desk.class)).toOSString()).resolve("drafts");
		if (!Files.isDirectory(notes)) {
			return List.of();
		}
		try (Stream<Path> files = Files.list(notes)) {
			return files.filter(f -> f.toString().endsWith(".draft")).filter(f -> book(f).equals(folder.toString())).toList();
		} catch (IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}

	private static String book(Path draft) {
		try (Stream<String> lines = Files.lines(draft)) {
			return lines.findFirst().orElse("");
		} catch (IOException | java.io.UncheckedIOException beingReplaced) {
			return "";
		}
	}

	private static RenameEverywhere rename(Thing thing) {
		return new RenameEverywhere(new Renaming(BookTexts.manuscript(Bench.desk().state()).orElseThrow(), thing, Set.of()));
	}

	private static Thing maker(String name) {
		return Uses.in(BookTexts.manuscript(Bench.desk().state()).orElseThrow()).all().stream().map(m -> m.thing())
				.filter(t -> t instanceof Thing.OfValue v && v.value().equals(name)).findFirst().orElseThrow();
	}
}
