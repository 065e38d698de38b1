package org.setwright.workbench.look;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What the field with the cursor means, or what is wrong with what stands in it. */
public final class HelpLine {
	private static final int LINES = 3;
	private static final int AROUND = 8;
	private final Composite line;
	private final int least;
	private final Label sign;
	private final Label sentence;

	/** Makes the line at the end of {@code parent}, which has a grid layout. */
	public HelpLine(Composite parent) {
		least = height(parent);
		line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).spacing(8, 0).applyTo(line);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, least).applyTo(line);
		sign = new Label(line, SWT.NONE);
		GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).applyTo(sign);
		sentence = new Label(line, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, true).hint(320, SWT.DEFAULT).applyTo(sentence);
		line.addListener(SWT.Resize, e -> line.getDisplay().asyncExec(() -> {
			if (!line.isDisposed()) {
				fit();
			}
		}));
	}

	/** @param text a sentence or a few @param mistake whether they tell what is wrong */
	public void say(String text, boolean mistake) {
		sign.setImage((mistake ? Icon.PROBLEM : Icon.NOTE).image());
		sentence.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		fit();
		sentence.requestLayout();
	}

	/** A sentence that needs more than three lines gets them. */
	private void fit() {
		int width = sentence.getSize().x;
		int wanted = width > 0 ? Math.max(least, sentence.computeSize(width, SWT.DEFAULT).y + AROUND) : least;
		GridData data = (GridData) line.getLayoutData();
		if (data.heightHint != wanted) {
			data.heightHint = wanted;
			line.requestLayout();
		}
	}

	/** Three lines of the type in use, so that nothing below moves when the sentence changes. */
	private static int height(Composite parent) {
		GC gc = new GC(parent);
		try {
			return LINES * gc.getFontMetrics().getHeight() + AROUND;
		} finally {
			gc.dispose();
		}
	}
}
