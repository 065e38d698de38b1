package org.setwright.workbench.fixes;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.MarkerAnnotation;
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
			Set<Problem> marked = marked(context);
			onLine(state, path.get(), document, context.getOffset()).stream().filter(p -> !marked.contains(p))
					.forEach(problem -> Mending.fixes(problem).forEach(fix -> offered.add(new FixProposal(path.get(), fix))));
			BookTexts.manuscript(state).flatMap(m -> new Splitting(m).at(path.get(), context.getOffset()))
					.ifPresent(fix -> offered.add(new FixProposal(path.get(), fix)));
		}
		return offered.isEmpty() ? null : offered.toArray(ICompletionProposal[]::new);
	}

	/** The problems whose mark the cursor touches: for these the platform asks {@link Mending} by itself. */
	private static Set<Problem> marked(IQuickAssistInvocationContext context) {
		Set<Problem> marked = new HashSet<>();
		IAnnotationModel model = context.getSourceViewer().getAnnotationModel();
		if (model != null) {
			model.getAnnotationIterator().forEachRemaining(annotation -> {
				Position at = model.getPosition(annotation);
				if (annotation instanceof MarkerAnnotation mark && at != null && at.getOffset() <= context.getOffset()
						&& context.getOffset() + Math.max(0, context.getLength()) <= at.getOffset() + at.getLength()) {
					Mending.problem(mark.getMarker()).ifPresent(marked::add);
				}
			});
		}
		return marked;
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
