package org.setwright.workbench.history;

import java.util.List;
import java.util.function.Function;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.setwright.book.history.Fault;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Spoken;

/** What is wrong, row by row. */
final class FaultTable {
	/** A good height for it. */
	static final int HEIGHT = 260;
	private final Composite pane;
	private final TableViewer viewer;

	FaultTable(Composite parent) {
		pane = new Composite(parent, SWT.NONE);
		viewer = new TableViewer(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.VIRTUAL);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.getTable().setHeaderVisible(true);
		viewer.getTable().setLinesVisible(true);
		Spoken.as(viewer.getControl(), Messages.FaultTable_name);
		TableColumnLayout layout = new TableColumnLayout();
		pane.setLayout(layout);
		ColumnViewerToolTipSupport.enableFor(viewer);
		column(layout, Messages.FaultTable_row, 10, f -> f.row() > 0 ? Integer.toString(f.row()) : f.at().file());
		column(layout, Messages.FaultTable_column, 20, Fault::column);
		column(layout, Messages.FaultTable_what, 35, Fault::what);
		column(layout, Messages.FaultTable_remedy, 35, Fault::remedy);
	}

	private void column(TableColumnLayout layout, String name, int share, Function<Fault, String> text) {
		boolean first = viewer.getTable().getColumnCount() == 0;
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(name);
		layout.setColumnData(column.getColumn(), new ColumnWeightData(share, 60));
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object fault) {
				return text.apply((Fault) fault);
			}

			@Override
			public String getToolTipText(Object fault) {
				return text.apply((Fault) fault);
			}

			@Override
			public Image getImage(Object fault) {
				return first ? Icon.PROBLEM.image() : null;
			}
		});
	}

	Control control() {
		return pane;
	}

	void show(List<Fault> faults) {
		viewer.setInput(faults);
		ColumnWidths.fit(viewer.getTable());
	}
}
