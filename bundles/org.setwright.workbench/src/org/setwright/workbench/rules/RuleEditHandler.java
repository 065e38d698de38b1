package org.setwright.workbench.rules;

import java.util.List;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.workbench.fixes.FixDone;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.text.TextEdit;

/** Edits the rules of the active editor, as one step to undo. */
abstract class RuleEditHandler extends AbstractHandler {
	private static final String RULES = ".drl"; //$NON-NLS-1$

	/** @return what to change; empty for nothing */
	abstract List<TextEdit> edits(IDocument document, ITextSelection selection);

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		if (HandlerUtil.getActiveEditor(event) instanceof ITextEditor editor && editor.isEditable()
				&& editor.getSelectionProvider().getSelection() instanceof ITextSelection selection) {
			IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
			if (BookTexts.path(document).filter(path -> path.endsWith(RULES)).isPresent()) {
				try {
					FixDone.type(document, edits(document, selection));
				} catch (BadLocationException impossible) {
					throw new ExecutionException(impossible.getMessage(), impossible);
				}
			}
		}
		return null;
	}
}
