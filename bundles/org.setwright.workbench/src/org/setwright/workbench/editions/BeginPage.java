package org.setwright.workbench.editions;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Stands in place of the editions while there are none: says why, and offers to begin. */
final class BeginPage {
	private static final int WIDTH = 420;
	private final Composite pane;
	private final Label words;
	private final Button button;

	BeginPage(Composite parent, Runnable begin) {
		pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(12, 12).spacing(0, 12).applyTo(pane);
		words = new Label(pane, SWT.WRAP);
		GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(words);
		button = new Button(pane, SWT.PUSH);
		button.setText(Messages.BeginPage_begin);
		button.addListener(SWT.Selection, e -> begin.run());
		button.setVisible(false);
	}

	Composite control() {
		return pane;
	}

	/** @param possible whether there is a book to begin with */
	void offer(boolean possible, String why) {
		words.setText(why.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		button.setVisible(possible);
		pane.layout();
	}
}
