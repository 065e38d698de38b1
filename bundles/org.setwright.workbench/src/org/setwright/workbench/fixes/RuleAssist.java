package org.setwright.workbench.fixes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.ui.PlatformUI;
import org.setwright.book.Problem;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.writing.fix.Splitting;

/** Offers what would mend the problems on the line of the cursor, and what else can be done to the rule. */
public final class RuleAssist implements IQuickAssistProcessor {

	@Override
	public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext context) {
		IDocument document = context.getSourceViewer().getDocument();
		Optional<String> path = BookTexts.path(document);
		DeskState state = PlatformUI.getWorkbench().getService(Desk.class).state();
		List<ICompletionProposal> offered = new ArrayList<>();
		if (path.isPresent()) {
			// with a selection the platform asks the marks in it by itself
			List<Problem> here = context.getLength() > 0 ? List.of() : onLine(state, path.get(), document, context.getOffset());
			here.forEach(problem -> Mending.fixes(problem).forEach(fix -> offered.add(new FixProposal(path.get(), fix))));
			BookTexts.manuscript(state).flatMap(m -> new Splitting(m).at(path.get(), context.getOffset()))
					.ifPresent(fix -> offered.add(new FixProposal(path.get(), fix)));
		}
		return offered.isEmpty() ? null : offered.toArray(ICompletionProposal[]::new);
	}

	private static List<Problem> onLine(DeskState state, String path, IDocument document, int offset) {
		try {
			int line = document.getLineOfOffset(offset) + 1;
			return state.latest().stream().flatMap(e -> e.problemsIn(path).stream()).filter(p -> p.at().line() == line).toList();
		} catch (BadLocationException typedMeanwhile) {
			return List.of();
		}
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
