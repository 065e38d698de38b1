package org.setwright.workbench.jobs;

import java.util.function.Function;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.setwright.workbench.look.Icon;

/** The columns of the list of jobs. */
final class JobColumns {
	private static final ColumnWeightData NAME = new ColumnWeightData(50, 170);
	private static final ColumnWeightData STANDING = new ColumnWeightData(32, 140);
	private static final ColumnWeightData PROGRESS = new ColumnWeightData(24, 110);

	private JobColumns() {
	}

	/** @return the layout that shares the width among the columns */
	static TableColumnLayout add(TableViewer viewer) {
		TableColumnLayout layout = new TableColumnLayout();
		viewer.getTable().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		column(viewer, layout, Messages.JobColumns_job, NAME, JobRow::name,
				row -> Icon.of(row.standing()).image());
		column(viewer, layout, Messages.JobColumns_standing, STANDING, JobRow::words, row -> null);
		column(viewer, layout, Messages.JobColumns_settings, PROGRESS, JobRow::progress, row -> null);
		return layout;
	}

	private static void column(TableViewer viewer, TableColumnLayout layout, String heading, ColumnWeightData width,
			Function<JobRow, String> text, Function<JobRow, Image> image) {
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(heading);
		layout.setColumnData(column.getColumn(), width);
		column.getColumn().setMoveable(true);
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object row) {
				return text.apply((JobRow) row);
			}

			@Override
			public Image getImage(Object row) {
				return image.apply((JobRow) row);
			}

			@Override
			public String getToolTipText(Object row) {
				return ((JobRow) row).path();
			}
		});
	}
}
