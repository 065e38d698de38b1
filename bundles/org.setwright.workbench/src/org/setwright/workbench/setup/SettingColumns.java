package org.setwright.workbench.setup;

import java.util.function.Function;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Palette;
import org.setwright.workbench.look.Written;
import org.setwright.workbench.setup.SettingRows.Group;
import org.setwright.workbench.uses.UseWords;
import org.setwright.writing.uses.Thing;

/** The columns of the list of settings. */
final class SettingColumns {
	private static final ColumnWeightData SETTING = new ColumnWeightData(26, 180);
	private static final ColumnWeightData VALUE = new ColumnWeightData(26, 130);
	private static final ColumnWeightData STATE = new ColumnWeightData(18, 128);
	private static final ColumnWeightData RULE = new ColumnWeightData(32, 130);
	private static final ColumnWeightData AUTHORITY = new ColumnWeightData(20, 92);

	private SettingColumns() {
	}

	/** @return the layout that shares the width among the columns */
	static TreeColumnLayout add(TreeViewer viewer) {
		TreeColumnLayout layout = new TreeColumnLayout();
		viewer.getTree().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		column(viewer, layout, Messages.SettingColumns_setting, SETTING, row -> new StyledString(row.setting().label()), row -> null);
		column(viewer, layout, Messages.SettingColumns_value, VALUE, SettingColumns::value, row -> null);
		column(viewer, layout, Messages.SettingColumns_state, STATE, row -> new StyledString(row.state()), SettingColumns::sign);
		column(viewer, layout, Messages.SettingColumns_rule, RULE, row -> new StyledString(row.rule()), row -> null);
		column(viewer, layout, Messages.SettingColumns_authority, AUTHORITY, row -> new StyledString(row.authority()), row -> null);
		return layout;
	}

	private static StyledString value(SettingRow row) {
		StyledString value = row.was().isPresent() ? new StyledString(row.value(), Written.changed())
				: new StyledString(row.value());
		row.was().ifPresent(was -> value.append("   " + NLS.bind(Messages.SettingColumns_was, was), //$NON-NLS-1$
				Written.in(Palette.Ink.QUIET)));
		row.expected().ifPresent(expected -> value.append("   " + NLS.bind(Messages.SettingColumns_expected, expected), //$NON-NLS-1$
				Written.in(Palette.Ink.ANNOTATION)));
		return value;
	}

	private static Image sign(SettingRow row) {
		return Icon.of(row.mark()).image();
	}

	private static void column(TreeViewer viewer, TreeColumnLayout layout, String heading, ColumnWeightData width,
			Function<SettingRow, StyledString> text, Function<SettingRow, Image> image) {
		TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(heading);
		layout.setColumnData(column.getColumn(), width);
		boolean first = viewer.getTree().getColumnCount() == 1;
		column.setLabelProvider(new DelegatingStyledCellLabelProvider(new Cell(first, text, image)));
	}

	/** What stands in one column. Headings stand in the first. */
	private static final class Cell extends ColumnLabelProvider
			implements DelegatingStyledCellLabelProvider.IStyledLabelProvider {
		private final boolean first;
		private final Function<SettingRow, StyledString> text;
		private final Function<SettingRow, Image> image;

		Cell(boolean first, Function<SettingRow, StyledString> text, Function<SettingRow, Image> image) {
			this.first = first;
			this.text = text;
			this.image = image;
		}

		@Override
		public StyledString getStyledText(Object element) {
			if (element instanceof Group group) {
				return first ? new StyledString(group.heading(), Written.in(Palette.Ink.HEADING)) : new StyledString();
			}
			return text.apply((SettingRow) element);
		}

		@Override
		public Image getImage(Object element) {
			return element instanceof SettingRow row ? image.apply(row) : null;
		}

		@Override
		public String getToolTipText(Object element) {
			if (!(element instanceof SettingRow row)) {
				return null;
			}
			String words = first ? UseWords.about(new Thing.OfSetting(row.setting())) : text.apply(row).getString();
			return words.isEmpty() ? null : Lines.broken(words);
		}
	}
}
