package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.folder.ProblemMarkers;
import org.setwright.workbench.folder.RecentBooks;

@ExtendWith(NothingLogged.class)
class RulesEditorTest {
	private static final String FILE = "rules/stages.drl";
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), Position.whole(FILE));
		Waiting.settle();
	}

	@AfterEach
	void close() {
		Bench.clear();
	}

	@Test
	void aMistakeIsMarkedWhileItIsTypedInPlainWords() throws Exception {
		type("OutdoorUnit(", "OutdorUnit(");
		Waiting.until(() -> !marks().isEmpty(), "a mark");
		IMarker mark = marks().get(0);
		assertEquals(8, mark.getAttribute(IMarker.LINE_NUMBER, 0));
		String words = mark.getAttribute(IMarker.MESSAGE, "");
		assertTrue(words.contains("OutdorUnit") && words.contains("OutdoorUnit"), words);
		assertEquals("OutdorUnit", document().get().substring(mark.getAttribute(IMarker.CHAR_START, 0), mark.getAttribute(IMarker.CHAR_END, 0)));
		type("OutdorUnit(", "OutdoorUnit(");
		Waiting.until(() -> marks().isEmpty(), "the mark to go");
	}

	@Test
	void whatIsTypedWorksAtOnceAndIsNotWrittenUntilSaved() throws Exception {
		String before = Files.readString(folder.resolve(FILE));
		type("COOL_STAGES, $s", "COOL_STAGES, 0");
		Bench.worked();
		assertEquals("0", coolingStages());
		assertEquals(before, Files.readString(folder.resolve(FILE)));
		editor().doSave(new NullProgressMonitor());
		Bench.worked();
		assertTrue(Files.readString(folder.resolve(FILE)).contains("COOL_STAGES, 0"));
		assertEquals("0", coolingStages());
	}

	@Test
	void closingWithoutSavingGoesBack() throws Exception {
		type("COOL_STAGES, $s", "COOL_STAGES, 0");
		Bench.worked();
		Bench.page().closeAllEditors(false);
		Bench.worked();
		assertEquals("1", coolingStages());
	}

	@Test
	void undoGoesBack() throws Exception {
		type("COOL_STAGES, $s", "COOL_STAGES, 0");
		Bench.page().activate(editor());
		Bench.command("org.eclipse.ui.edit.undo");
		Bench.worked();
		assertEquals("1", coolingStages());
	}

	@Test
	void aChangeMadeElsewhereIsPickedUp() throws Exception {
		Bench.page().closeAllEditors(false);
		Path file = folder.resolve(FILE);
		Files.writeString(file, Files.readString(file).replace("COOL_STAGES, $s", "COOL_STAGES, 0"));
		Bench.command("org.setwright.workbench.refresh");
		Waiting.until(() -> coolingStages().equals("0"), "the change to be seen");
	}

	@Test
	void wordsHaveColours() {
		StyledText text = (StyledText) editor().getAdapter(org.eclipse.swt.widgets.Control.class);
		int rule = text.getText().indexOf("rule ");
		int plain = text.getText().indexOf("stages )");
		Waiting.until(() -> text.getStyleRangeAtOffset(rule) != null && text.getStyleRangeAtOffset(rule).foreground != null, "the colour of \"rule\"");
		assertTrue(text.getStyleRangeAtOffset(plain) == null || text.getStyleRangeAtOffset(plain).foreground == null
				|| !text.getStyleRangeAtOffset(plain).foreground.equals(text.getStyleRangeAtOffset(rule).foreground));
	}

	@Test
	void theBookIsRememberedAmongTheRecentOnes() {
		assertEquals(folder, new RecentBooks().list().get(0));
	}

	@Test
	void nothingOfThePlatformIsWrittenIntoTheBook() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(List.of("book.yaml", "jobs", "rules", "tables"), files.map(f -> f.getFileName().toString()).sorted().toList());
		}
	}

	private static String coolingStages() {
		return Bench.desk().state().latest().flatMap(e -> e.outcome("jobs/larch-lane-14.yaml"))
				.map(o -> o.settings().stream().filter(s -> s.setting().id().equals("COOL_STAGES")).findFirst().orElseThrow())
				.flatMap(s -> s.value()).map(v -> v.text()).orElse("none");
	}

	private static List<IMarker> marks() {
		try {
			return List.of(BookProject.linked().orElseThrow().findMarkers(ProblemMarkers.TYPE, false, IResource.DEPTH_INFINITE));
		} catch (CoreException e) {
			throw new IllegalStateException(e);
		}
	}

	private static void type(String instead, String text) throws Exception {
		IDocument document = document();
		document.replace(document.get().indexOf(instead), instead.length(), text);
	}

	private static ITextEditor editor() {
		return (ITextEditor) Bench.page().getEditors()[0];
	}

	private static IDocument document() {
		return editor().getDocumentProvider().getDocument(editor().getEditorInput());
	}
}
