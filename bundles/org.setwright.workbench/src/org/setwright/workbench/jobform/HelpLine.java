package org.setwright.workbench.jobform;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.workbench.look.Icon;

/** What the field with the cursor means, or what is wrong with what stands in it. */
final class HelpLine {
	private static final int HEIGHT = 54;
	private final Label sign;
	private final Label sentence;

	HelpLine(Composite parent) {
		Composite line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).spacing(8, 0).applyTo(line);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, HEIGHT).applyTo(line);
		sign = new Label(line, SWT.NONE);
		GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.TOP).applyTo(sign);
		sentence = new Label(line, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, true).hint(320, SWT.DEFAULT).applyTo(sentence);
	}

	void say(String text, boolean mistake) {
		sign.setImage((mistake ? Icon.PROBLEM : Icon.NOTE).image());
		sentence.setText(text.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		sentence.requestLayout();
	}
}
