package org.setwright.workbench.uses;

import java.util.Optional;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.Manuscript;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** What is pointed at in the active view or editor, or what the cursor of the active editor stands on; and the book it stands in. */
record WordAtCursor(Manuscript manuscript, Thing thing) {

	static Optional<WordAtCursor> of(ExecutionEvent event) {
		Pointed pointed = Adapters.adapt(HandlerUtil.getActivePart(event), Pointed.class);
		Optional<Thing> thing = pointed != null ? pointed.pointed()
				: HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor ? Pointed.in(editor) : Optional.empty();
		Optional<Manuscript> manuscript = BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state());
		return thing.flatMap(t -> manuscript.map(m -> new WordAtCursor(m, t)));
	}

	static Optional<WordAtCursor> at(Desk desk, IDocument document, int offset) {
		Optional<Manuscript> manuscript = BookTexts.manuscript(desk.state());
		return BookTexts.path(document).flatMap(path -> manuscript.flatMap(m -> Uses.at(m, path, offset).map(thing -> new WordAtCursor(m, thing))));
	}
}
