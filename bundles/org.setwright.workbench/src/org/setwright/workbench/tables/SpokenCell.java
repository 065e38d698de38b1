package org.setwright.workbench.tables;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Table;

/** Tells a screen reader the cell with the cursor, because by itself it only tells the row. */
final class SpokenCell {
	private final Table table;
	private String said = ""; //$NON-NLS-1$

	SpokenCell(Table table) {
		this.table = table;
		table.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getDescription(AccessibleEvent event) {
				event.result = event.childID == ACC.CHILDID_SELF ? said : event.result;
			}
		});
	}

	/** Says the cell of {@code of} with the cursor, if that is another than before. */
	void at(TableDocument of, int row, int column) {
		String words = words(of, row, column);
		if (!words.equals(said)) {
			said = words;
			table.getAccessible().sendEvent(ACC.EVENT_DESCRIPTION_CHANGED, null);
		}
	}

	/** @return for example "outdoor unit maker, row 2: Norrvik", and what is wrong with it */
	static String words(TableDocument of, int row, int column) {
		if (column < 0) {
			String marks = of.marks().inShort(row);
			return NLS.bind(Messages.SpokenCell_row, row + 1, marks.isEmpty() ? Messages.SpokenCell_nothing : marks);
		}
		String text = of.sheet().cell(row, column);
		String cell = NLS.bind(Messages.SpokenCell_cell,
				new Object[] { of.sheet().headings().get(column), row + 1, text.isEmpty() ? Messages.SpokenCell_empty : text });
		return String.join(" ", cell, String.join(" ", of.marks().cell(row, column))).strip(); //$NON-NLS-1$ //$NON-NLS-2$
	}
}
