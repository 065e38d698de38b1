package org.setwright.workbench.tables;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;

/** Knows whether the menu of a table was asked for on a heading, and on which. What is done with the rows afterwards ends that. */
final class PointedHeading {
	private final Table table;
	private int column = -1;

	PointedHeading(Table table) {
		this.table = table;
		table.addListener(SWT.MenuDetect, e -> column = e.detail == SWT.MENU_MOUSE ? columnAt(e) : -1);
		for (int ends : new int[] { SWT.KeyDown, SWT.MouseDown, SWT.Selection }) {
			table.addListener(ends, e -> column = -1);
		}
	}

	/** @return the column, the marks being 0; -1 when it is no heading that is pointed at */
	int column() {
		return column;
	}

	/** Platforms differ in where they count from, so the rows say where headings end and columns begin. */
	private int columnAt(Event event) {
		Point at = table.toControl(event.x, event.y);
		boolean rows = table.getItemCount() > 0;
		Rectangle top = rows ? table.getItem(table.getTopIndex()).getBounds(0) : new Rectangle(0, table.getHeaderHeight(), 0, 0);
		int x = top.x;
		for (int index : at.y < top.y ? table.getColumnOrder() : new int[0]) {
			Rectangle cell = rows ? table.getItem(table.getTopIndex()).getBounds(index) : new Rectangle(x, 0, table.getColumn(index).getWidth(), 0);
			x = cell.x + cell.width;
			if (at.x < x) {
				return index;
			}
		}
		return -1;
	}
}
