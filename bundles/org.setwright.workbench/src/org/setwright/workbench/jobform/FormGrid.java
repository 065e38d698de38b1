package org.setwright.workbench.jobform;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.workbench.look.Palette;

/** Questions in three columns: what is asked, the field, a quiet remark. */
final class FormGrid {
	private static final int LEAST_FIELD_WIDTH = 120;
	private static final int FIELD_WIDTH = 180;
	private static final int ROOM_FOR_SIGN = 8;

	private FormGrid() {
	}

	static Composite in(Composite parent) {
		Composite grid = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 7).applyTo(grid);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
		return grid;
	}

	static void ask(Composite grid, String question, String meaning) {
		Label label = new Label(grid, SWT.NONE);
		label.setText(question);
		label.setToolTipText(meaning);
	}

	static void field(Control field) {
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).minSize(LEAST_FIELD_WIDTH, SWT.DEFAULT)
				.hint(FIELD_WIDTH, SWT.DEFAULT).indent(ROOM_FOR_SIGN, 0).applyTo(field);
	}

	static void remark(Composite grid, String remark) {
		Label label = new Label(grid, SWT.NONE);
		label.setText(remark);
		label.setForeground(Palette.now().colour(Palette.Ink.QUIET));
		GridDataFactory.swtDefaults().applyTo(label);
	}
}
