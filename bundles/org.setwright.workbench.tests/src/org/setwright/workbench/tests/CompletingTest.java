package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IResource;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.twopage.TwoPageEditor;

/** The key for completion works in the texts of jobs, tables and settings as it does in rules. */
@ExtendWith(NothingLogged.class)
class CompletingTest {
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
		Bench.worked();
	}

	@AfterEach
	void close() {
		Arrays.stream(Bench.window().getShell().getShells()).forEach(Shell::close);
		Bench.clear();
	}

	@Test
	void inTheTextOfAJob() throws Exception {
		assertEquals("humidifier: ", completed("jobs/mill-road-3.yaml", "", "humidif"));
	}

	@Test
	void inTheTextOfATable() throws Exception {
		assertEquals("Norrvik,energised in heating", completed("tables/changeover-by-maker.csv", "Norrvik,", "energised in h"));
	}

	@Test
	void inTheSettingsOfTheShop() throws Exception {
		Files.writeString(folder.resolve("settings.yaml"), "settings:\n");
		Bench.open(folder);
		BookProject.linked().orElseThrow().refreshLocal(IResource.DEPTH_INFINITE, null);
		Bench.worked();
		assertEquals("  - setting: ", completed("settings.yaml", "  - ", "sett"));
	}

	/** Types a new last line, asks for what may come next, and takes the first word. @return that line */
	private static String completed(String path, String before, String begun) throws Exception {
		ITextEditor editor = Places.text(Bench.page(), path).orElseThrow();
		if (Bench.editor() instanceof TwoPageEditor pages) {
			pages.showText();
		}
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		String text = document.get().stripTrailing() + "\n" + before + begun;
		document.set(text);
		editor.selectAndReveal(text.length(), 0);
		((Control) editor.getAdapter(Control.class)).setFocus();
		Waiting.settle();
		Bench.command("org.eclipse.ui.edit.text.contentAssist.proposals");
		Waiting.until(() -> list().isPresent(), "the list of words");
		Table list = list().orElseThrow();
		assertTrue(list.getItemCount() > 0);
		list.setSelection(0);
		list.notifyListeners(SWT.DefaultSelection, new Event());
		Waiting.settle();
		return document.get().substring(document.get().lastIndexOf('\n') + 1);
	}

	private static Optional<Table> list() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(s -> s != Bench.window().getShell() && s.isVisible()).flatMap(CompletingTest::inside)
				.filter(Table.class::isInstance).map(Table.class::cast).findFirst();
	}

	private static Stream<Control> inside(Control control) {
		return control instanceof Composite composite ? Stream.concat(Stream.of(control), Arrays.stream(composite.getChildren()).flatMap(CompletingTest::inside))
				: Stream.of(control);
	}
}
