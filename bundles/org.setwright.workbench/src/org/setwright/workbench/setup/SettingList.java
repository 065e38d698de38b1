package org.setwright.workbench.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.setwright.trade.catalogue.Setting;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.Branches;
import org.setwright.workbench.rows.SameBy;
import org.setwright.workbench.setup.SettingRows.Group;
import org.setwright.writing.uses.Thing;

/** The settings of a job under their headings. */
final class SettingList {
	private final TreeViewer viewer;
	private List<Group> groups = List.of();

	/** @param picked told which setting a person looks at @param opened told for which row a person wants the rule */
	SettingList(Composite parent, Consumer<Setting> picked, Consumer<SettingRow> opened) {
		Composite frame = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Branches<>(Group.class, Group::rows));
		viewer.setComparer(new SameBy<>(Object.class, SettingList::key));
		frame.setLayout(SettingColumns.add(viewer));
		viewer.addPostSelectionChangedListener(e -> row().ifPresent(r -> picked.accept(r.setting())));
		viewer.addOpenListener(e -> row().ifPresent(opened));
		Spoken.as(viewer.getControl(), Messages.SettingList_name);
	}

	/** A row is the same when it shows the same setting. */
	private static Object key(Object line) {
		return line instanceof SettingRow row ? row.setting() : line instanceof Group group ? group.heading() : line;
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** @return the setting a person looks at */
	Optional<Thing> pointed() {
		return row().map(r -> new Thing.OfSetting(r.setting()));
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
}
