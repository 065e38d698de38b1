package org.setwright.workbench.rules;

import java.util.List;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextSelection;
import org.setwright.writing.layout.Commenting;
import org.setwright.writing.text.TextEdit;

/** Makes comments of the selected lines, and rules again of comments. */
public final class CommentHandler extends RuleEditHandler {

	@Override
	List<TextEdit> edits(IDocument document, ITextSelection selection) {
		return Commenting.toggled(document.get(), selection.getOffset(), selection.getOffset() + selection.getLength());
	}
}
