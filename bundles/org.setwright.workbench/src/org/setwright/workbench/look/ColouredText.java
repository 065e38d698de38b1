package org.setwright.workbench.look;

import java.util.List;
import java.util.function.Function;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.ITypedRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.TextPresentation;
import org.eclipse.jface.text.presentation.IPresentationDamager;
import org.eclipse.jface.text.presentation.IPresentationRepairer;
import org.eclipse.jface.text.presentation.PresentationReconciler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.setwright.workbench.look.Palette.Ink;

/** Colours a text. What is typed may begin or end a comment anywhere, so a change recolours the whole of it. */
public class ColouredText extends PresentationReconciler {

	/** A coloured stretch. @param start offset of its first character @param length in characters */
	public record Stretch(int start, int length, Ink ink) {
	}

	/** @param stretches finds in a text what is to be coloured, in order, without overlaps */
	public ColouredText(Function<String, List<Stretch>> stretches) {
		Painter painter = new Painter(stretches);
		setDamager(painter, IDocument.DEFAULT_CONTENT_TYPE);
		setRepairer(painter, IDocument.DEFAULT_CONTENT_TYPE);
	}

	@Override
	public void install(ITextViewer viewer) {
		super.install(viewer);
		Repaint.with(viewer.getTextWidget(), viewer::invalidateTextPresentation);
	}

	/** Finds and paints. */
	private static final class Painter implements IPresentationDamager, IPresentationRepairer {
		private final Function<String, List<Stretch>> stretches;
		private IDocument document;

		Painter(Function<String, List<Stretch>> stretches) {
			this.stretches = stretches;
		}

		@Override
		public void setDocument(IDocument shown) {
			document = shown;
		}

		@Override
		public IRegion getDamageRegion(ITypedRegion partition, DocumentEvent event, boolean partitioningChanged) {
			return new Region(0, document.getLength());
		}

		@Override
		public void createPresentation(TextPresentation presentation, ITypedRegion damage) {
			Palette palette = Palette.now();
			for (Stretch stretch : stretches.apply(document.get())) {
				presentation.addStyleRange(new StyleRange(stretch.start(), stretch.length(), palette.colour(stretch.ink()), null,
						style(stretch.ink())));
			}
		}

		/** What is told apart by its colour is told apart by its shape, too, where it stands beside the other. */
		private static int style(Ink ink) {
			return switch (ink) {
				case KEYWORD, SETTING -> SWT.BOLD;
				case AUTHORITY, FIELD -> SWT.ITALIC;
				default -> SWT.NORMAL;
			};
		}
	}
}
