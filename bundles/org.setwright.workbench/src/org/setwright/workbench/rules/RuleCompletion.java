package org.setwright.workbench.rules;

import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.CompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.rules.Completions.Completion;
import org.setwright.workbench.uses.UseWords;
import org.setwright.writing.uses.Mention;
import org.setwright.writing.uses.Thing;
import org.setwright.writing.uses.Uses;

/** Offers the words that may come next, each with what people call it and what it means. */
public final class RuleCompletion implements IContentAssistProcessor {
	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		String rules = viewer.getDocument().get();
		int begun = Completions.begun(rules, offset).length();
		List<Completion> offered = new Completions(BookTexts.catalogue(), RuleCompletion::findings).at(rules, offset);
		Map<String, String> findings = UseWords.ofFindings(offered.stream().filter(c -> c.meaning().isEmpty()).map(Completion::word).toList());
		return offered.stream().map(c -> new CompletionProposal(c.word(), offset - begun, begun, c.word().length(), null, shown(c), null,
				beside(c.meaning().isEmpty() ? findings.getOrDefault(c.word(), "") : c.meaning()))).toArray(ICompletionProposal[]::new); //$NON-NLS-1$
	}

	private static String beside(String meaning) {
		return meaning.isEmpty() ? null : Lines.broken(meaning);
	}

	/** The findings of all files, as they are being typed. */
	private static List<String> findings() {
		return BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state()).map(m -> Uses.in(m).all().stream().map(Mention::thing)
				.filter(Thing.OfFinding.class::isInstance).map(t -> ((Thing.OfFinding) t).name()).distinct().sorted().toList()).orElse(List.of());
	}

	private static String shown(Completion completion) {
		return completion.label().isEmpty() ? completion.word() : completion.word() + "   " + completion.label(); //$NON-NLS-1$
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
