package org.setwright.workbench.uses;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.hyperlink.AbstractHyperlinkDetector;
import org.eclipse.jface.text.hyperlink.IHyperlink;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Leads from a finding to the rules that make it, and from a setting to those that propose it. */
public final class MentionLinks extends AbstractHyperlinkDetector {

	@Override
	public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean several) {
		Optional<Piece> piece = RuleText.of(viewer.getDocument().get()).pieceAt(region.getOffset());
		Optional<WordAtCursor> word = BookTexts.path(viewer.getDocument()).filter(path -> path.endsWith(".drl")) //$NON-NLS-1$
				.flatMap(path -> WordAtCursor.at(PlatformUI.getWorkbench().getService(Desk.class), viewer.getDocument(), region.getOffset()));
		if (piece.isEmpty() || word.isEmpty()) {
			return null;
		}
		List<Mention> from = Uses.in(word.get().manuscript()).definitions(word.get().thing());
		return from.isEmpty() ? null : new IHyperlink[] {
				new Link(new Region(piece.get().start(), piece.get().text().length()), word.get().thing(), word.get().manuscript(), from) };
	}

	/** A link to where something comes from. */
	private record Link(IRegion getHyperlinkRegion, Thing thing, Manuscript manuscript, List<Mention> from) implements IHyperlink {
		@Override
		public String getTypeLabel() {
			return null;
		}

		@Override
		public String getHyperlinkText() {
			return NLS.bind(Messages.MentionLinks_from, thing.called());
		}

		@Override
		public void open() {
			MentionList.show(PlatformUI.getWorkbench().getActiveWorkbenchWindow(), getHyperlinkText(), manuscript, from, true);
		}
	}
}
