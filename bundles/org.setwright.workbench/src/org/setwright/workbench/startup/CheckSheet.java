package org.setwright.workbench.startup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CaretEvent;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Palette.Ink;
import org.setwright.workbench.look.Spoken;

/** Shows a sheet: text to be read, copied and walked through with the keys; the card with the caret is the one picked. */
final class CheckSheet {
	private static final int LABEL = 40;
	private static final int WORDS = 134;
	private static final int MARGIN = 10;
	private static final int SPACING = 3;
	private final StyledText text;
	private final Consumer<Optional<StartUpCheck>> picked;
	private Sheet sheet = new Sheet("", List.of(), List.of()); //$NON-NLS-1$

	/** @param picked told which check a person looks at @param opened told of which one a person wants the rule */
	CheckSheet(Composite parent, Consumer<Optional<StartUpCheck>> picked, Consumer<StartUpCheck> opened) {
		this.picked = picked;
		text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
		text.setLineSpacing(SPACING);
		text.addCaretListener(this::caretMoved);
		text.addListener(SWT.MouseDoubleClick, e -> picked().ifPresent(opened));
		text.addListener(SWT.DefaultSelection, e -> picked().ifPresent(opened));
		Spoken.as(text, Messages.StartUpView_list);
	}

	StyledText control() {
		return text;
	}

	/** @return the check with the caret */
	Optional<StartUpCheck> picked() {
		return sheet.at(text.getCaretOffset());
	}

	/** Shows {@code shown}, and keeps the place when it is the same check list in other words. */
	void show(Sheet shown, boolean samePlace) {
		int top = text.getTopPixel();
		sheet = shown;
		text.setText(shown.text());
		paint();
		if (samePlace) {
			text.setTopPixel(top);
		}
		picked.accept(picked());
	}

	/** Colours anew, after a change between light and dark. */
	void paint() {
		text.setStyleRanges(sheet.marks().stream().map(CheckSheet::style).toArray(StyleRange[]::new));
		text.setTabStops(new int[] { LABEL, WORDS });
		text.setWrapIndent(0);
		for (int line = 0; line < text.getLineCount(); line++) {
			boolean second = !Character.isDigit((text.getLine(line) + " ").charAt(0)); //$NON-NLS-1$
			text.setLineWrapIndent(line, 1, second ? WORDS : LABEL);
		}
	}

	private void caretMoved(CaretEvent event) {
		picked.accept(sheet.at(event.caretOffset));
	}

	private static StyleRange style(Sheet.Mark mark) {
		Ink ink = switch (mark.kind()) {
			case PHASE -> Ink.HEADING;
			case STEP -> Ink.TEXT;
			case LABEL, QUIET -> Ink.QUIET;
			case ALARM -> Ink.ANNOTATION;
		};
		boolean bold = mark.kind() != Sheet.Kind.LABEL && mark.kind() != Sheet.Kind.QUIET;
		return new StyleRange(mark.start(), mark.length(), Palette.now().colour(ink), null, bold ? SWT.BOLD : SWT.NORMAL);
	}
}
