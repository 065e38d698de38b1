package org.setwright.workbench.completing;

import java.util.ListResourceBundle;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.CompletionProposal;
import org.eclipse.jface.text.contentassist.ContentAssistant;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.ui.texteditor.ContentAssistAction;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.texteditor.ITextEditorActionDefinitionIds;
import org.setwright.workbench.look.Lines;
import org.setwright.writing.completing.Offer;
import org.setwright.writing.completing.Offer.Offered;

/** Offers words when somebody asks for them with the key, and never by itself. */
public class OfferedWords implements IContentAssistProcessor {
	/** The action of a text editor that asks for them. */
	public static final String ACTION = "ContentAssistProposal"; //$NON-NLS-1$

	/** What may stand at a place of a half-written text. */
	@FunctionalInterface
	public interface Source {
		/** @return what may be written at {@code offset} of {@code text} */
		Offered at(String text, int offset);
	}

	private final Source source;

	/** @param source asked whenever somebody presses the key */
	public OfferedWords(Source source) {
		this.source = source;
	}

	/** @return what shows the words of {@code source}, for the configuration of a text editor */
	public static IContentAssistant assistant(Source source) {
		ContentAssistant assistant = new ContentAssistant();
		assistant.setContentAssistProcessor(new OfferedWords(source), IDocument.DEFAULT_CONTENT_TYPE);
		assistant.enableAutoActivation(false);
		assistant.setInformationControlCreator(parent -> new DefaultInformationControl(parent, true));
		return assistant;
	}

	/** @return the action that the key for completion calls in {@code editor} */
	public static IAction action(ITextEditor editor) {
		ContentAssistAction action = new ContentAssistAction(new ListResourceBundle() {
			@Override
			protected Object[][] getContents() {
				return new Object[][] { { ACTION + ".label", Messages.OfferedWords_action } }; //$NON-NLS-1$
			}
		}, ACTION + ".", editor); //$NON-NLS-1$
		action.setActionDefinitionId(ITextEditorActionDefinitionIds.CONTENT_ASSIST_PROPOSALS);
		return action;
	}

	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		Offered offered = source.at(viewer.getDocument().get(), offset);
		return offered.offers().stream().map(o -> proposal(o, offered.start(), offset)).toArray(ICompletionProposal[]::new);
	}

	private static ICompletionProposal proposal(Offer offer, int start, int offset) {
		String shown = offer.remark().isEmpty() ? offer.word().strip() : offer.word().strip() + "   " + offer.remark(); //$NON-NLS-1$
		return new CompletionProposal(offer.word(), start, Math.max(0, offset - start), offer.word().length(), null, shown, null,
				offer.meaning().isEmpty() ? null : Lines.broken(offer.meaning()));
	}

	@Override
	public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
		return new IContextInformation[0];
	}

	@Override
	public char[] getCompletionProposalAutoActivationCharacters() {
		return new char[0];
	}

	@Override
	public char[] getContextInformationAutoActivationCharacters() {
		return new char[0];
	}

	@Override
	public String getErrorMessage() {
		return null;
	}

	@Override
	public IContextInformationValidator getContextInformationValidator() {
		return null;
	}
}
