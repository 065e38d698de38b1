package org.setwright.workbench.fixes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.Manuscript;
import org.setwright.writing.fix.Fix;
import org.setwright.writing.fix.Splitting;

/** Offers what can be done to the rule under the cursor, problem or not. */
public final class RuleAssist implements IQuickAssistProcessor {

	@Override
	public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext context) {
		IDocument document = context.getSourceViewer().getDocument();
		Optional<String> path = BookTexts.path(document);
		Optional<Manuscript> manuscript = BookTexts.manuscript(PlatformUI.getWorkbench().getService(Desk.class).state());
		List<ICompletionProposal> offered = new ArrayList<>();
		if (path.isPresent() && manuscript.isPresent()) {
			fixes(manuscript.get(), path.get(), context.getOffset()).forEach(fix -> offered.add(new FixProposal(path.get(), fix)));
		}
		return offered.isEmpty() ? null : offered.toArray(ICompletionProposal[]::new);
	}

	private static List<Fix> fixes(Manuscript manuscript, String path, int offset) {
		return new Splitting(manuscript).at(path, offset).stream().toList();
	}

	@Override
	public boolean canAssist(IQuickAssistInvocationContext context) {
		return true;
	}

	/** Problems have their own offers, see {@link Mending}. */
	@Override
	public boolean canFix(Annotation annotation) {
		return false;
	}

	@Override
	public String getErrorMessage() {
		return null;
	}
}
