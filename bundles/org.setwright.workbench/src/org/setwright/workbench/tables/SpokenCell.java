package org.setwright.workbench.tables;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Table;
import org.setwright.workbench.look.Spoken;

/** Tells a screen reader the cell with the cursor, because by itself it only tells the row. */
final class SpokenCell {
	private final Table table;
	private RowMarks.Cell said = new RowMarks.Cell(-1, -1);

	SpokenCell(Table table) {
		this.table = table;
	}

	/** Says the cell of {@code of} with the cursor, if that is another than before. */
	void at(TableDocument of, int row, int column) {
		RowMarks.Cell now = new RowMarks.Cell(row, column);
		boolean beside = said.row() == row && said.column() != column;
		said = now;
		Spoken.more(table, words(of, row, column));
		if (beside) {
			Spoken.cell(table, column + 1);
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
