package org.setwright.workbench.rules;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.reconciler.AbstractReconciler;
import org.eclipse.jface.text.reconciler.DirtyRegion;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotationModel;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/** Folds whole rules, so that their names can be read like a list. */
public final class RuleFolding extends AbstractReconciler {
	private ProjectionViewer viewer;

	@Override
	public void install(ITextViewer shown) {
		super.install(shown);
		if (shown instanceof ProjectionViewer folding) {
			viewer = folding;
		}
	}

	@Override
	protected void initialProcess() {
		fold();
	}

	@Override
	protected void process(DirtyRegion region) {
		fold();
	}

	@Override
	protected void reconcilerDocumentChanged(IDocument document) {
		// the whole text is looked at each time
	}

	@Override
	public IReconcilingStrategy getReconcilingStrategy(String contentType) {
		return null;
	}

	/** Folds that stay keep their state: closed ones stay closed. */
	private void fold() {
		ProjectionAnnotationModel model = viewer == null ? null : viewer.getProjectionAnnotationModel();
		IDocument document = getDocument();
		if (model == null || document == null) {
			return;
		}
		Set<Position> wanted = places(document);
		Set<Annotation> gone = new HashSet<>();
		model.getAnnotationIterator().forEachRemaining(a -> {
			if (!wanted.remove(model.getPosition(a))) {
				gone.add(a);
			}
		});
		Map<ProjectionAnnotation, Position> fresh = new HashMap<>();
		wanted.forEach(p -> fresh.put(new ProjectionAnnotation(), p));
		if (!gone.isEmpty() || !fresh.isEmpty()) {
			model.modifyAnnotations(gone.toArray(Annotation[]::new), fresh, null);
		}
	}

	private static Set<Position> places(IDocument document) {
		Set<Position> places = new HashSet<>();
		for (RuleBlock block : RuleText.of(document.get()).blocks()) {
			try {
				int first = document.getLineOfOffset(block.start());
				int last = document.getLineOfOffset(block.end());
				if (last > first) {
					IRegion end = document.getLineInformation(last);
					int behind = Math.min(document.getLength(), end.getOffset() + document.getLineLength(last));
					int start = document.getLineOffset(first);
					places.add(new Position(start, behind - start));
				}
			} catch (BadLocationException typedMeanwhile) {
				return places;
			}
		}
		return places;
	}
}
