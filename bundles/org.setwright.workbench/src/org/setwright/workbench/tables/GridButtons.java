package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** What can be done with rows. The buttons go on to a second line where there is no room. */
final class GridButtons {
	private final Composite line;
	private final Button keep;
	private final Button fill;
	private final List<Button> onRows = new ArrayList<>();
	private final List<Button> onFile = new ArrayList<>();
	private final Button add;

	/** What the buttons do. */
	interface Deeds {
		/** Adds a row below the one picked. */
		void add();

		/** Removes the rows picked. */
		void remove();

		/** Moves the row picked. @param by 1 down, -1 up */
		void move(int by);

		/** Sorts the file as it is shown. */
		void keep();

		/** Adds a row for the hole picked. */
		void fill();
	}

	GridButtons(Composite parent, Deeds deeds) {
		line = new Composite(parent, SWT.NONE);
		RowLayout layout = new RowLayout(SWT.HORIZONTAL);
		layout.marginLeft = 0;
		line.setLayout(layout);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
		add = button(Messages.GridButtons_add, Messages.GridButtons_addExplained, deeds::add);
		onRows.add(button(Messages.GridButtons_remove, Messages.GridButtons_removeExplained, deeds::remove));
		onFile.add(button(Messages.GridButtons_up, Messages.GridButtons_upExplained, () -> deeds.move(-1)));
		onFile.add(button(Messages.GridButtons_down, Messages.GridButtons_downExplained, () -> deeds.move(1)));
		keep = button(Messages.GridButtons_keep, Messages.GridButtons_keepExplained, deeds::keep);
		fill = button(Messages.GridButtons_fill, Messages.GridButtons_fillExplained, deeds::fill);
	}

	/** @param rows how many are picked @param sorted whether they are shown in another order than the file's @param hole whether one is picked */
	void enable(boolean sound, int rows, boolean sorted, boolean hole) {
		add.setEnabled(sound);
		onRows.forEach(b -> b.setEnabled(sound && rows > 0));
		onFile.forEach(b -> b.setEnabled(sound && rows == 1 && !sorted));
		keep.setEnabled(sound && sorted);
		fill.setEnabled(sound && hole);
	}

	private Button button(String text, String explained, Runnable deed) {
		Button button = new Button(line, SWT.PUSH);
		button.setText(text);
		button.setToolTipText(explained);
		button.addListener(SWT.Selection, e -> deed.run());
		return button;
	}
}
