package org.setwright.workbench.landing;

import java.util.function.Function;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.setwright.workbench.landing.LandingRows.Group;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Palette;

/** The columns of the list of conductors. */
final class LandingColumns {
	private static final ColumnWeightData CONDUCTOR = new ColumnWeightData(24, 146);
	private static final ColumnWeightData DUTY = new ColumnWeightData(24, 130);
	private static final ColumnWeightData END = new ColumnWeightData(14, 76);
	private static final ColumnWeightData WHAT = new ColumnWeightData(40, 150);

	private LandingColumns() {
	}

	/** @return the layout that shares the width among the columns */
	static TreeColumnLayout add(TreeViewer viewer) {
		TreeColumnLayout layout = new TreeColumnLayout();
		viewer.getTree().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		column(viewer, layout, Messages.LandingColumns_conductor, CONDUCTOR, LandingRow::conductor, row -> row.colour().map(Swatch::of).orElse(null));
		column(viewer, layout, Messages.LandingColumns_duty, DUTY, LandingRow::duty, row -> null);
		column(viewer, layout, Messages.LandingColumns_wall, END, LandingRow::wall, row -> null);
		column(viewer, layout, Messages.LandingColumns_equipment, END, LandingRow::equipment, row -> null);
		column(viewer, layout, Messages.LandingColumns_what, WHAT, LandingRow::what, row -> Icon.of(row.mark()).image());
		return layout;
	}

	private static void column(TreeViewer viewer, TreeColumnLayout layout, String heading, ColumnWeightData width, Function<LandingRow, String> text,
			Function<LandingRow, Image> image) {
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(heading);
		layout.setColumnData(column.getColumn(), width);
		boolean first = viewer.getTree().getColumnCount() == 1;
		column.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object element) {
				return element instanceof LandingRow row ? text.apply(row) : first ? ((Group) element).heading() : ""; //$NON-NLS-1$
			}

			@Override
			public Image getImage(Object element) {
				return element instanceof LandingRow row ? image.apply(row) : null;
			}

			@Override
			public Color getForeground(Object element) {
				return element instanceof Group ? Palette.now().colour(Palette.Ink.HEADING) : null;
			}

			@Override
			public String getToolTipText(Object element) {
				return element instanceof LandingRow row ? Lines.broken(row.detail()) : null;
			}
		});
	}
}
