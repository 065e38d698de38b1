package org.setwright.workbench.tables;

import java.util.List;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.Spoken;

/** Picks one of a few choices for a cell. Its value is the text. */
final class ChoiceCell extends ComboBoxCellEditor {

	/** @param name what a screen reader calls it */
	ChoiceCell(Composite table, List<String> choices, String name) {
		super(table, choices.toArray(String[]::new), SWT.READ_ONLY);
		combo().setVisibleItemCount(20);
		Spoken.as(combo(), name);
		setActivationStyle(DROP_DOWN_ON_KEY_ACTIVATION | DROP_DOWN_ON_MOUSE_ACTIVATION);
	}

	private CCombo combo() {
		return (CCombo) getControl();
	}

	@Override
	protected Object doGetValue() {
		return combo().getText();
	}

	@Override
	protected void doSetValue(Object value) {
		int index = combo().indexOf((String) value);
		if (index >= 0) {
			combo().select(index);
		} else {
			combo().setText((String) value);
		}
	}
}
