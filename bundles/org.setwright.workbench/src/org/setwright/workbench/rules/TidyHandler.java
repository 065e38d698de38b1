package org.setwright.workbench.rules;

import java.util.List;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.setwright.writing.layout.Tidy;
import org.setwright.writing.text.TextEdit;

/** Lays the rules of the active editor out as the starter book is. */
public final class TidyHandler extends RuleEditHandler {

	@Override
	List<TextEdit> edits(IDocument document, ITextSelection selection) {
		String text = document.get();
		String tidied = Tidy.of(text);
		return tidied.equals(text) ? List.of() : List.of(TextEdit.between(text, tidied));
	}
}
