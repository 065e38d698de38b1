package org.setwright.workbench.uses;

import java.util.Optional;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.Manuscript;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** What the word under the cursor of the active editor stands for, and the book it stands in. */
record WordAtCursor(Manuscript manuscript, Thing thing) {

	static Optional<WordAtCursor> of(ExecutionEvent event) {
		IEditorPart part = HandlerUtil.getActiveEditor(event);
		if (part instanceof ITextEditor editor && editor.getSelectionProvider().getSelection() instanceof ITextSelection cursor) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			return at(part.getSite().getService(Desk.class), document, cursor.getOffset());
		}
		return Optional.empty();
	}

	static Optional<WordAtCursor> at(Desk desk, IDocument document, int offset) {
		Optional<Manuscript> manuscript = BookTexts.manuscript(desk.state());
		return BookTexts.path(document).flatMap(path -> manuscript.flatMap(m -> Uses.at(m, path, offset).map(thing -> new WordAtCursor(m, thing))));
	}
}
