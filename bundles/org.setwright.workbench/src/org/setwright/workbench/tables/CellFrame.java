package org.setwright.workbench.tables;

import org.eclipse.jface.viewers.FocusCellHighlighter;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.setwright.workbench.look.Palette;

/** Draws a frame around the cell with the cursor; signs and text below it stay as they are. */
final class CellFrame extends FocusCellHighlighter {
	private static final int WIDTH = 2;
	private final Table table;

	CellFrame(TableViewer viewer) {
		super(viewer);
		table = viewer.getTable();
		table.addListener(SWT.PaintItem, this::paint);
	}

	@Override
	protected void focusCellChanged(ViewerCell now, ViewerCell before) {
		super.focusCellChanged(now, before);
		table.redraw();
	}

	private void paint(Event event) {
		ViewerCell focus = getFocusCell();
		if (focus != null && focus.getItem() == event.item && focus.getColumnIndex() == event.index && !event.item.isDisposed()) {
			Rectangle cell = focus.getBounds();
			event.gc.setForeground(Palette.now().colour(Palette.Ink.TEXT));
			event.gc.setLineWidth(WIDTH);
			event.gc.drawRectangle(cell.x + 1, cell.y + 1, cell.width - WIDTH, cell.height - WIDTH);
		}
	}
}
