package org.setwright.workbench.jobform;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** Questions in three columns: what is asked, the field, a quiet remark. */
final class FormGrid {
	private static final int LEAST_FIELD_WIDTH = 120;
	private static final int FIELD_WIDTH = 130;
	private static final int ROOM_FOR_SIGN = 8;

	private FormGrid() {
	}

	static Composite in(Composite parent) {
		Composite grid = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).spacing(8, 7).applyTo(grid);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(grid);
		return grid;
	}

	/** @return what shows the question */
	static Label ask(Composite grid, String question, String meaning) {
		Label label = new Label(grid, SWT.NONE);
		label.setText(question);
		label.setToolTipText(meaning);
		return label;
	}

	static void field(Control field) {
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).minSize(LEAST_FIELD_WIDTH, SWT.DEFAULT)
				.hint(FIELD_WIDTH, SWT.DEFAULT).indent(ROOM_FOR_SIGN, 0).applyTo(field);
	}

	/** A button beside a field, with a sign on it. @param spoken what it does; a screen reader calls it so */
	record Push(Icon sign, String spoken, Runnable deed) {
	}

	static void remark(Composite grid, String remark) {
		remark(grid, remark, Optional.empty());
	}

	static void remark(Composite grid, String remark, Optional<Push> push) {
		Composite cell = new Composite(grid, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(8, 0).applyTo(cell);
		Label label = new Label(cell, SWT.NONE);
		label.setText(remark);
		Type.ink(label, Palette.Ink.QUIET);
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).grab(true, true).applyTo(label);
		push.ifPresent(p -> {
			Button button = new Button(cell, SWT.PUSH | SWT.FLAT);
			button.setImage(p.sign().image());
			button.setToolTipText(p.spoken());
			Spoken.as(button, p.spoken());
			button.addListener(SWT.Selection, e -> p.deed().run());
		});
		GridDataFactory.fillDefaults().applyTo(cell);
	}
}
