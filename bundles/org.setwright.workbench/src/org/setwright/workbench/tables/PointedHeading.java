package org.setwright.workbench.tables;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
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

	private int columnAt(Event event) {
		Point at = table.toControl(event.x, event.y);
		if (at.y >= table.getClientArea().y + table.getHeaderHeight() || at.y < table.getClientArea().y) {
			return -1;
		}
		int x = table.getClientArea().x - at.x;
		for (int index : table.getColumnOrder()) {
			x += table.getColumn(index).getWidth();
			if (x > 0) {
				return index;
			}
		}
		return -1;
	}
}
