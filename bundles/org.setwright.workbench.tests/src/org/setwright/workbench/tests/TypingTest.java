package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setwright.book.Position;
import org.setwright.workbench.folder.Places;

/** Rules typed key by key, with nothing asked for: what is typed arrives, and no list takes a key away. */
@ExtendWith(NothingLogged.class)
class TypingTest {
	private static final String TYPED = """
			rule "typed by hand"
			@authority( sh
			op practice )
			@because( "Testing." )
			@source( common practice )
			when
			Out
			doorUnit( st
			ages == 2, kind == AIR
			_CONDITIONER )
			no
			t Humidifier( )
			then
			prop
			ose( COOL
			_STAGES, 2 );
			find( DUAL
			_FUEL_JOB );
			en
			d
			""";
	/** Longer than the platform waits before it offers something by itself. */
	private static final int MOMENT_MILLIS = 700;
	@TempDir
	private Path folder;

	@BeforeEach
	void open() throws IOException {
		Bench.openTestBook(folder);
		Places.open(Bench.page(), Position.whole("rules/heat-pump.drl"));
		Bench.worked();
	}

	@AfterEach
	void close() {
		Arrays.stream(Bench.window().getShell().getShells()).forEach(Shell::close);
		Bench.clear();
	}

	@Test
	void whatIsTypedArrivesWholeThoughWordsBeginAsProposalsDoAndLinesEndThere() {
		IDocument document = document();
		String before = document.get();
		StyledText text = cursorAtTheEnd();
		TYPED.chars().forEach(c -> {
			if (c == '\n') {
				Bench.moment(MOMENT_MILLIS);
			}
			key(text, (char) c);
		});
		assertEquals(before + TYPED, document.get());
	}

	@Test
	void whatIsTypedWithoutAPauseArrivesWholeToo() {
		IDocument document = document();
		String before = document.get();
		StyledText text = cursorAtTheEnd();
		TYPED.chars().forEach(c -> key(text, (char) c));
		Bench.moment(MOMENT_MILLIS);
		assertEquals(before + TYPED, document.get());
	}

	private static StyledText cursorAtTheEnd() {
		ITextEditor editor = (ITextEditor) Bench.editor();
		Bench.window().getShell().forceActive();
		Bench.page().activate(editor);
		editor.selectAndReveal(document().getLength(), 0);
		StyledText text = (StyledText) editor.getAdapter(Control.class);
		text.forceFocus();
		Waiting.until(text::isFocusControl, "the editor to have the keys");
		return text;
	}

	/** Presses and lets go of the key that writes {@code character}, and lets the window do what it does then. */
	private static void key(StyledText text, char character) {
		Event key = new Event();
		key.character = character == '\n' ? SWT.CR : character;
		key.keyCode = character == '\n' ? SWT.CR : Character.toLowerCase(character);
		text.notifyListeners(SWT.KeyDown, key);
		text.notifyListeners(SWT.KeyUp, key);
		Waiting.settle();
	}

	private static IDocument document() {
		ITextEditor editor = (ITextEditor) Bench.editor();
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}
}
