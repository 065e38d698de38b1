package org.setwright.workbench.rules;

import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.setwright.trade.Trade;
import org.setwright.workbench.look.Lines;

/** Says what the word under the pointer means. */
public final class RuleHover implements ITextHover {
	private final WordMeaning meaning = new WordMeaning(Trade.catalogue());

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion word) {
		return meaning.at(viewer.getDocument().get(), word.getOffset()).map(Lines::broken).orElse(null);
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}
