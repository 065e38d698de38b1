package org.setwright.workbench.editions;

import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.setwright.editions.compare.SideBySide;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Palette.Ink;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;

/** A text as it was and as it is, line by line beside each other. A sign in the margin tells which lines differ, and so does their ground. */
final class SidePane {
	/** The line is on both sides, and differs. */
	static final String DIFFERS = "\u2260"; //$NON-NLS-1$
	/** The line is only on the later side. */
	static final String NEW = "+"; //$NON-NLS-1$
	/** The line is only on the earlier side. */
	static final String GONE = "\u2212"; //$NON-NLS-1$
	private static final int MARGIN_WIDTH = 28;
	private static final int LEAST_WIDTH = 80;
	private final Composite pane;
	private final Table table;

	SidePane(Composite parent) {
		this(parent, Messages.SidePane_before, Messages.SidePane_after);
	}

	/** @param left heading of the one side @param right of the other */
	SidePane(Composite parent, String left, String right) {
		pane = new Composite(parent, SWT.NONE);
		table = new Table(pane, SWT.FULL_SELECTION | SWT.BORDER);
		table.setHeaderVisible(true);
		table.setFont(JFaceResources.getTextFont());
		Spoken.as(table, Messages.SidePane_name);
		TableColumnLayout layout = new TableColumnLayout();
		column(layout, Messages.SidePane_sign, 0, MARGIN_WIDTH);
		column(layout, left, 1, LEAST_WIDTH);
		column(layout, right, 1, LEAST_WIDTH);
		pane.setLayout(layout);
		Repaint.with(table, this::paint);
	}

	private void column(TableColumnLayout layout, String heading, int share, int width) {
		TableColumn column = new TableColumn(table, SWT.LEFT);
		column.setText(heading);
		layout.setColumnData(column, new ColumnWeightData(share, width));
	}

	Composite control() {
		return pane;
	}

	/** Shows these two; both empty for nothing. */
	void show(String before, String after) {
		table.setRedraw(false);
		try {
			table.removeAll();
			for (SideBySide.Row row : SideBySide.of(before, after).rows()) {
				TableItem item = new TableItem(table, SWT.NONE);
				item.setText(new String[] { sign(row), shown(row.left()), shown(row.right()) });
				item.setData(row);
			}
			paint();
			ColumnWidths.fitWhole(table);
		} finally {
			table.setRedraw(true);
		}
		reveal();
	}

	/** The first line that differs is to be seen. */
	private void reveal() {
		for (TableItem item : table.getItems()) {
			if (((SideBySide.Row) item.getData()).changed()) {
				table.showItem(item);
				return;
			}
		}
	}

	/** @return what stands in the margin; empty for a line that is the same on both sides */
	static String sign(SideBySide.Row row) {
		return !row.changed() ? "" : row.left().isEmpty() ? NEW : row.right().isEmpty() ? GONE : DIFFERS; //$NON-NLS-1$
	}

	private static String shown(String line) {
		return line.replace("\t", "    "); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private void paint() {
		for (TableItem item : table.getItems()) {
			boolean changed = ((SideBySide.Row) item.getData()).changed();
			item.setBackground(changed ? Palette.now().colour(Ink.CHANGED_GROUND) : null);
			item.setForeground(changed ? Palette.now().colour(Ink.TEXT) : null);
		}
	}
}
