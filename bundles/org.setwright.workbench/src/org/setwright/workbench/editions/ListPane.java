package org.setwright.workbench.editions;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;
import org.setwright.workbench.rows.RowTree.Manner;

/** A sentence, buttons if there are any, and lines below. */
final class ListPane {
	private final Composite pane;
	private final Label words;
	private final Composite buttons;
	private final RowTree tree;

	ListPane(Composite parent, String name, List<RowTree.Column> columns) {
		pane = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(pane);
		words = new Label(pane, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(words);
		buttons = new Composite(pane, SWT.NONE);
		buttons.setLayout(new RowLayout());
		GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(buttons);
		tree = new RowTree(pane, name, columns, Manner.READ);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.control());
	}

	Button button(String label, Runnable does) {
		GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
		Button button = new Button(buttons, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, e -> does.run());
		return button;
	}

	Composite control() {
		return pane;
	}

	/** @return where the buttons are, for other things beside them */
	Composite buttons() {
		return buttons;
	}

	RowTree tree() {
		return tree;
	}

	void say(String sentence) {
		words.setText(sentence.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		pane.layout();
	}

	void show(String sentence, List<Row> rows) {
		say(sentence);
		tree.show(rows);
	}
}
