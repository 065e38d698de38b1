package org.setwright.workbench.uses;

import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.Manuscript;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/**
 * A part of the window in which something of the book can be pointed at without a cursor in a text. Views and editors give it
 * as an adapter; then the commands that find uses, lead to where something comes from, and rename, begin there.
 */
@FunctionalInterface
public interface Pointed {

	/** @return what is pointed at now; empty when it is nothing of the book */
	Optional<Thing> pointed();

	/** @return what the cursor of {@code editor} stands on */
	static Optional<Thing> in(ITextEditor editor) {
		IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
		return editor.getSelectionProvider().getSelection() instanceof ITextSelection cursor ? at(document, cursor.getOffset()) : Optional.empty();
	}

	/** @return what the word at {@code offset} of a file of the book stands for */
	static Optional<Thing> at(IDocument document, int offset) {
		return BookTexts.path(document).flatMap(path -> book().flatMap(m -> Uses.at(m, path, offset)));
	}

	/** @return what a cell of the table at {@code path} stands for; rows from 0, -1 for the headings */
	static Optional<Thing> inCell(String path, int row, int column) {
		return book().flatMap(m -> Uses.inCell(m, path, row, column));
	}

	private static Optional<Manuscript> book() {
		return BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state());
	}
}
