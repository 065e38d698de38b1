package org.setwright.workbench.uses;

import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.look.Lines;

/** Says in the text of a job or table what the word under the pointer means, where it is used, and on how many jobs. */
public final class WordHover implements ITextHover {

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion word) {
		return about(viewer.getDocument(), word.getOffset()).map(Lines::broken).orElse(null);
	}

	/** @return the same for the word at {@code offset}, lines not yet broken; empty when it is nothing of the book */
	public static Optional<String> about(IDocument document, int offset) {
		return WordAtCursor.at(PlatformUI.getWorkbench().getService(Desk.class), document, offset)
				.map(at -> (ThingWords.of(at.thing()).orElse("") + "\n" + UseWords.of(at)).strip()); //$NON-NLS-1$ //$NON-NLS-2$
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}
