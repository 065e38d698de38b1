package org.setwright.workbench.landing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.landing.LandingRows.Group;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.Branches;

/** The conductors of a job under their headings. */
final class LandingList {
	private final TreeViewer viewer;

	/** @param picked told which line a person looks at @param opened told for which line a person wants the job's wire */
	LandingList(Composite parent, Consumer<Optional<LandingRow>> picked, Consumer<LandingRow> opened) {
		Composite frame = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Branches<>(Group.class, Group::rows));
		frame.setLayout(LandingColumns.add(viewer));
		viewer.addPostSelectionChangedListener(e -> picked.accept(row()));
		viewer.addOpenListener(e -> row().ifPresent(opened));
		Spoken.as(viewer.getControl(), Messages.LandingView_list);
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Shows {@code groups}; the line that was picked stays so where there still is one, otherwise the first is. */
	void show(List<Group> groups) {
		Optional<String> before = row().map(LandingRow::key);
		viewer.getControl().setRedraw(false);
		viewer.setInput(groups);
		viewer.expandAll();
		ColumnWidths.fit(viewer.getTree());
		viewer.getControl().setRedraw(true);
		List<LandingRow> rows = groups.stream().flatMap(g -> g.rows().stream()).toList();
		Optional<LandingRow> again = rows.stream().filter(r -> before.equals(Optional.of(r.key()))).findFirst().or(() -> rows.stream().findFirst());
		viewer.setSelection(again.map(StructuredSelection::new).orElse(StructuredSelection.EMPTY), again.map(LandingRow::key).equals(before));
		if (!again.map(LandingRow::key).equals(before) && viewer.getTree().getItemCount() > 0) {
			viewer.getTree().setTopItem(viewer.getTree().getItem(0));
		}
	}

	Optional<LandingRow> row() {
		return viewer.getStructuredSelection().getFirstElement() instanceof LandingRow row ? Optional.of(row) : Optional.empty();
	}
}
