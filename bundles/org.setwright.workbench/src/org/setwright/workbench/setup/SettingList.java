package org.setwright.workbench.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.setup.SettingRows.Group;

/** The settings of a job under their headings. */
final class SettingList {
	private final TreeViewer viewer;
	private List<Group> groups = List.of();

	/** @param picked told which setting a person looks at @param opened told for which row a person wants the rule */
	SettingList(Composite parent, Consumer<Setting> picked, Consumer<SettingRow> opened) {
		Composite frame = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Groups());
		viewer.setComparer(new SameSetting());
		frame.setLayout(SettingColumns.add(viewer));
		viewer.addPostSelectionChangedListener(e -> row().ifPresent(r -> picked.accept(r.setting())));
		viewer.addOpenListener(e -> row().ifPresent(opened));
		Spoken.as(viewer.getControl(), Messages.SettingList_name);
	}

	TreeViewer viewer() {
		return viewer;
	}

	void show(List<Group> rows) {
		groups = rows;
		viewer.getControl().setRedraw(false);
		viewer.setInput(rows);
		viewer.expandAll();
		ColumnWidths.fit(viewer.getTree());
		viewer.getControl().setRedraw(true);
	}

	/** Marks {@code setting}, wherever it was picked. */
	void pick(Optional<Setting> setting) {
		if (!setting.equals(row().map(SettingRow::setting))) {
			viewer.setSelection(groups.stream().flatMap(g -> g.rows().stream())
					.filter(r -> setting.equals(Optional.of(r.setting()))).findFirst().map(StructuredSelection::new)
					.orElse(StructuredSelection.EMPTY), true);
		}
	}

	private Optional<SettingRow> row() {
		return viewer.getStructuredSelection().getFirstElement() instanceof SettingRow row ? Optional.of(row)
				: Optional.empty();
	}

	/** Headings over rows. */
	private static final class Groups implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object element) {
			return element instanceof Group group ? group.rows().toArray() : new Object[0];
		}

		@Override
		public Object getParent(Object element) {
			return null;
		}

		@Override
		public boolean hasChildren(Object element) {
			return element instanceof Group;
		}
	}
}
