package org.setwright.workbench.rows;

import java.util.Comparator;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.TreeColumn;

/** Sorts by a click on a heading: another one sorts the other way, a third as the lines are given. */
public final class HeadingSort {
	private HeadingSort() {
	}

	/** Has a click on the heading of {@code column} sort lines by {@code order}. */
	public static void on(TreeViewer viewer, TreeColumn column, Comparator<Object> order) {
		column.addListener(SWT.Selection, e -> clicked(viewer, column, order));
	}

	private static void clicked(TreeViewer viewer, TreeColumn column, Comparator<Object> order) {
		boolean same = viewer.getTree().getSortColumn() == column;
		int before = same ? viewer.getTree().getSortDirection() : SWT.NONE;
		int now = before == SWT.NONE ? SWT.UP : before == SWT.UP ? SWT.DOWN : SWT.NONE;
		viewer.getTree().setSortColumn(now == SWT.NONE ? null : column);
		viewer.getTree().setSortDirection(now);
		viewer.setComparator(now == SWT.NONE ? null : new ViewerComparator() {
			@Override
			public int compare(Viewer shown, Object a, Object b) {
				return now == SWT.UP ? order.compare(a, b) : -order.compare(a, b);
			}
		});
	}
}
