package org.setwright.workbench.editions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;

/** Lines with columns, all of them unfolded. */
final class RowTree {
	private static final int LEAST_WIDTH = 60;
	private final Composite pane;
	private final TreeViewer viewer;
	private List<Row> rows = List.of();

	/** One column. @param share of the width */
	record Column(String heading, int share) {
	}

	RowTree(Composite parent, String name, List<Column> columns) {
		pane = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(pane, SWT.FULL_SELECTION | SWT.BORDER);
		viewer.setUseHashlookup(true);
		viewer.setComparer(new SameRow());
		viewer.setContentProvider(new Contents());
		viewer.getTree().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		TreeColumnLayout layout = new TreeColumnLayout();
		for (int i = 0; i < columns.size(); i++) {
			add(layout, columns.get(i), i);
		}
		pane.setLayout(layout);
		Spoken.as(viewer.getControl(), name);
	}

	private void add(TreeColumnLayout layout, Column column, int at) {
		TreeViewerColumn added = new TreeViewerColumn(viewer, SWT.LEFT);
		added.getColumn().setText(column.heading());
		layout.setColumnData(added.getColumn(), new ColumnWeightData(column.share(), LEAST_WIDTH));
		added.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object row) {
				return ((Row) row).cell(at).replaceAll("\\s*\\R\\s*", " "); //$NON-NLS-1$ //$NON-NLS-2$
			}

			@Override
			public String getToolTipText(Object row) {
				return Lines.broken(((Row) row).cell(at));
			}

			@Override
			public Image getImage(Object row) {
				return at == 0 ? ((Row) row).sign().image() : null;
			}
		});
	}

	Composite control() {
		return pane;
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Tells {@code picked} what the picked line is about, empty when nothing, and {@code opened} when a line is opened. */
	void onPick(Consumer<Optional<Object>> picked, Consumer<Object> opened) {
		viewer.addPostSelectionChangedListener(e -> picked.accept(picked()));
		viewer.addOpenListener(e -> picked().ifPresent(opened));
	}

	/** @return what the picked line is about */
	Optional<Object> picked() {
		return Optional.ofNullable((Row) viewer.getStructuredSelection().getFirstElement()).flatMap(Row::about);
	}

	/** Picks the line that is about {@code wanted}, among those at the top. */
	void pick(Object wanted) {
		rows.stream().filter(r -> r.about().filter(wanted::equals).isPresent()).findFirst()
				.ifPresent(r -> viewer.setSelection(new StructuredSelection(r), true));
	}

	/** What is picked stays so where it still is there. */
	void show(List<Row> now) {
		rows = now;
		viewer.getControl().setRedraw(false);
		try {
			StructuredSelection picked = (StructuredSelection) viewer.getStructuredSelection();
			viewer.setInput(rows);
			viewer.expandAll();
			viewer.setSelection(picked);
		} finally {
			viewer.getControl().setRedraw(true);
		}
	}

	private final class Contents implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object all) {
			return ((List<?>) all).toArray();
		}

		@Override
		public Object[] getChildren(Object row) {
			return ((Row) row).below().toArray();
		}

		@Override
		public Object getParent(Object row) {
			return Arrays.stream(rows.toArray()).filter(r -> ((Row) r).below().contains(row)).findFirst().orElse(null);
		}

		@Override
		public boolean hasChildren(Object row) {
			return !((Row) row).below().isEmpty();
		}
	}

	/** A row is the same row when it says the same. */
	private static final class SameRow implements IElementComparer {
		@Override
		public boolean equals(Object a, Object b) {
			return a instanceof Row one && b instanceof Row other ? one.cells().equals(other.cells()) : a.equals(b);
		}

		@Override
		public int hashCode(Object element) {
			return element instanceof Row row ? row.cells().hashCode() : System.identityHashCode(element);
		}
	}
}
