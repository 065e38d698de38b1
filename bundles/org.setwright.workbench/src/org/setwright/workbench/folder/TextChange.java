package org.setwright.workbench.folder;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.text.undo.DocumentUndoManagerRegistry;
import org.eclipse.text.undo.IDocumentUndoManager;

/**
 * The smallest single replacement that turns one text into another.
 *
 * @param offset where it begins, from 0
 * @param length how many characters go
 * @param replacement what comes in their place
 */
public record TextChange(int offset, int length, String replacement) {

	/** @return the change that makes {@code after} of {@code before} */
	public static TextChange between(String before, String after) {
		int shorter = Math.min(before.length(), after.length());
		int start = 0;
		while (start < shorter && before.charAt(start) == after.charAt(start)) {
			start++;
		}
		int end = 0;
		while (end < shorter - start
				&& before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
			end++;
		}
		return new TextChange(start, before.length() - start - end, after.substring(start, after.length() - end));
	}

	/** Makes the change in {@code document}, as one step to undo. */
	public void in(IDocument document) {
		IDocumentUndoManager undo = DocumentUndoManagerRegistry.getDocumentUndoManager(document);
		if (undo != null) {
			undo.commit();
		}
		try {
			document.replace(offset, length, replacement);
		} catch (BadLocationException impossible) {
			throw new IllegalStateException(toString(), impossible);
		}
		if (undo != null) {
			undo.commit();
		}
	}
}
