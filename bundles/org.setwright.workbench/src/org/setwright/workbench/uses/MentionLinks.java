package org.setwright.workbench.uses;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
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
import org.setwright.writing.text.RuleText;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Leads from a finding to the rules that make it, and from a setting to those that propose it. */
public final class MentionLinks extends AbstractHyperlinkDetector {
	private static final String SIGNS = "\r\n,:;{}[]\"#"; //$NON-NLS-1$

	@Override
	public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean several) {
		IDocument document = viewer.getDocument();
		Optional<WordAtCursor> word = WordAtCursor.at(PlatformUI.getWorkbench().getService(Desk.class), document, region.getOffset());
		Optional<IRegion> underlined = BookTexts.path(document).flatMap(path -> path.endsWith(".drl") ? piece(document.get(), region.getOffset()) //$NON-NLS-1$
				: Optional.of(between(document.get(), region.getOffset())));
		if (underlined.isEmpty() || word.isEmpty()) {
			return null;
		}
		List<Mention> from = Uses.in(word.get().manuscript()).definitions(word.get().thing());
		return from.isEmpty() ? null : new IHyperlink[] { new Link(underlined.get(), word.get().thing(), word.get().manuscript(), from) };
	}

	private static Optional<IRegion> piece(String rules, int offset) {
		return RuleText.of(rules).pieceAt(offset).map(p -> new Region(p.start(), p.text().length()));
	}

	/** @return the words around {@code offset} of a job or table, as far as no sign separates them */
	private static IRegion between(String text, int offset) {
		int start = offset;
		int end = offset;
		while (start > 0 && SIGNS.indexOf(text.charAt(start - 1)) < 0) {
			start--;
		}
		while (end < text.length() && SIGNS.indexOf(text.charAt(end)) < 0) {
			end++;
		}
		while (start < offset && text.charAt(start) == ' ') {
			start++;
		}
		return new Region(start, end - start);
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
