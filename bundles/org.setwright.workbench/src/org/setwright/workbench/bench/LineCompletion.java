package org.setwright.workbench.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.contentassist.CompletionProposal;
import org.eclipse.jface.text.contentassist.ContentAssistant;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.SourceViewerConfiguration;
import org.setwright.bench.completing.Completion;
import org.setwright.bench.completing.Offer;
import org.setwright.bench.hand.AtHand;

/** Offers what could be typed next, with its meaning beside it. */
final class LineCompletion extends SourceViewerConfiguration {
	private static final int WAIT_MILLIS = 300;
	private final Supplier<Optional<AtHand>> hand;

	/** @param hand what lies on the bench; empty while nothing does */
	LineCompletion(Supplier<Optional<AtHand>> hand) {
		this.hand = hand;
	}

	@Override
	public IContentAssistant getContentAssistant(ISourceViewer viewer) {
		ContentAssistant assistant = new ContentAssistant();
		assistant.setContentAssistProcessor(new Offers(hand), org.eclipse.jface.text.IDocument.DEFAULT_CONTENT_TYPE);
		assistant.setInformationControlCreator(shell -> new DefaultInformationControl(shell, false));
		assistant.enableAutoActivation(true);
		assistant.setAutoActivationDelay(WAIT_MILLIS);
		assistant.setStatusLineVisible(true);
		assistant.setStatusMessage(Messages.LineCompletion_status);
		return assistant;
	}

	/** Asks the bench. */
	private record Offers(Supplier<Optional<AtHand>> hand) implements IContentAssistProcessor {
		@Override
		public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
			String typed = before(viewer, offset);
			List<Offer> offers = hand.get().map(h -> Completion.of(h, typed)).orElse(List.of());
			return offers.stream().map(o -> proposal(o, offset)).toArray(ICompletionProposal[]::new);
		}

		private static ICompletionProposal proposal(Offer offer, int offset) {
			int from = Math.min(offer.from(), offset);
			return new CompletionProposal(offer.text(), from, offset - from, offer.text().length(), null, offer.text().strip(), null,
					offer.meaning().isBlank() ? null : offer.meaning());
		}

		private static String before(ITextViewer viewer, int offset) {
			try {
				return viewer.getDocument().get(0, offset);
			} catch (BadLocationException gone) {
				return ""; //$NON-NLS-1$
			}
		}

		@Override
		public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
			return null;
		}

		@Override
		public char[] getCompletionProposalAutoActivationCharacters() {
			return new char[] { ':', '@', '(' };
		}

		@Override
		public char[] getContextInformationAutoActivationCharacters() {
			return null;
		}

		@Override
		public String getErrorMessage() {
			return Messages.LineCompletion_nothing;
		}

		@Override
		public IContextInformationValidator getContextInformationValidator() {
			return null;
		}
	}
}
