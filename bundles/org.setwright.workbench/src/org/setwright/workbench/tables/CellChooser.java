package org.setwright.workbench.tables;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.Spoken;

/** Writes into a cell: pick a choice, or write where more than the choices may stand. Its value is the text. */
final class CellChooser extends ComboBoxCellEditor {
	private final boolean free;

	/** @param name what a screen reader calls it @param typed told of every change before it is taken */
	CellChooser(Composite table, List<String> choices, boolean free, String name, Consumer<String> typed) {
		super(table, choices.toArray(String[]::new), free ? SWT.NONE : SWT.READ_ONLY);
		this.free = free;
		combo().setVisibleItemCount(20);
		combo().addListener(SWT.Modify, e -> typed.accept(combo().getText()));
		Spoken.as(combo(), name);
		setActivationStyle(DROP_DOWN_ON_KEY_ACTIVATION | DROP_DOWN_ON_MOUSE_ACTIVATION);
	}

	private CCombo combo() {
		return (CCombo) getControl();
	}

	@Override
	public void activate(ColumnViewerEditorActivationEvent event) {
		super.activate(event);
		if (free && event.sourceEvent instanceof KeyEvent key && !Character.isISOControl(key.character)) {
			combo().setText(String.valueOf(key.character));
			combo().setSelection(new org.eclipse.swt.graphics.Point(1, 1));
		}
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
