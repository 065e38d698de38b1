package org.setwright.workbench.rules;

import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.uses.WordHover;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleText;

/** Says what the word under the pointer means, where it is used, and on how many jobs. */
public final class RuleHover implements ITextHover {

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion word) {
		IDocument document = viewer.getDocument();
		String about = WordHover.about(document, word.getOffset()).or(() -> ofRules(document.get(), word.getOffset())).orElse(""); //$NON-NLS-1$
		return about.isEmpty() ? null : Lines.broken(about);
	}

	/** Words that are nothing of the book: those of the language, kinds of caution, parts of a start-up. */
	private Optional<String> ofRules(String rules, int offset) {
		Optional<Piece> piece = RuleText.of(rules).pieceAt(offset);
		if (piece.filter(p -> p.kind() == Piece.Kind.WORD).isEmpty()) {
			return Optional.empty();
		}
		String word = piece.get().text();
		return LanguageWords.meaning(word).or(() -> new WordMeaning(BookTexts.catalogue()).at(rules, offset)).map(means -> means + BookTexts
				.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state()).map(book -> "\n" + LanguageWords.used(book, word)).orElse("")); //$NON-NLS-1$ //$NON-NLS-2$
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		return new Region(offset, 0);
	}
}
