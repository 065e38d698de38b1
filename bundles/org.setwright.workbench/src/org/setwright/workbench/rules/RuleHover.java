package org.setwright.workbench.rules;

import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.uses.UseWords;

/** Says what the word under the pointer means, where it is used, and on how many jobs. */
public final class RuleHover implements ITextHover {

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion word) {
		String means = new WordMeaning(BookTexts.catalogue()).at(viewer.getDocument().get(), word.getOffset()).orElse(""); //$NON-NLS-1$
		String used = UseWords.at(viewer.getDocument(), word.getOffset()).orElse(""); //$NON-NLS-1$
		String all = (means + "\n" + used).strip(); //$NON-NLS-1$
		return all.isEmpty() ? null : Lines.broken(all);
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}
