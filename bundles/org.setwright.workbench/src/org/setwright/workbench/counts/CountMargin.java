package org.setwright.workbench.counts;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.osgi.util.NLS;
import org.setwright.writing.live.Tally;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;

/** Marks in the margin of an editor the rules that no saved job makes speak. The mark has a shape of its own and says so in words. */
final class CountMargin {
	/** The kind of mark. */
	static final String TYPE = "org.setwright.workbench.unspoken"; //$NON-NLS-1$
	private final ISourceViewer viewer;
	private Map<String, Annotation> marks = Map.of();

	CountMargin(ISourceViewer viewer) {
		this.viewer = viewer;
	}

	/** Shows the marks that {@code tally} asks for and no others; marks that stay are left alone. */
	void show(Tally tally) {
		if (!(viewer.getAnnotationModel() instanceof IAnnotationModelExtension model) || viewer.getDocument() == null) {
			return;
		}
		Map<String, Annotation> wanted = new HashMap<>();
		Map<Annotation, Position> fresh = new HashMap<>();
		for (RuleBlock block : RuleText.of(viewer.getDocument().get()).blocks()) {
			String rule = block.called();
			if (tally.of(rule).filter(t -> t.speaks() == 0).isPresent()) {
				Annotation mark = marks.getOrDefault(rule, new Annotation(TYPE, false, NLS.bind(Messages.CountMargin_unspoken, rule)));
				wanted.put(rule, mark);
				if (!marks.containsKey(rule)) {
					fresh.put(mark, new Position(block.start(), block.name().map(n -> n.end() - block.start()).orElse(0)));
				}
			}
		}
		List<Annotation> gone = marks.entrySet().stream().filter(e -> !wanted.containsKey(e.getKey())).map(Map.Entry::getValue).toList();
		if (!gone.isEmpty() || !fresh.isEmpty()) {
			model.replaceAnnotations(gone.toArray(Annotation[]::new), fresh);
		}
		marks = wanted;
	}
}
