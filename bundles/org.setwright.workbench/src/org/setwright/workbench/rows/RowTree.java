package org.setwright.workbench.rows;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;

/** Lines with columns, and lines below them. Use it in the window's thread. */
public final class RowTree {
	private static final int LEAST_WIDTH = 50;
	private static final int LETTER_WIDTH = 9;
	private final Composite pane;
	private final TreeViewer viewer;
	private final Manner manner;
	private List<Row> rows = List.of();
	private boolean lackingOnly;
	private String search = ""; //$NON-NLS-1$

	/** One column. @param share of the width @param least pixels it needs */
	public record Column(String heading, int share, int least) {
		/** As wide as its heading at least. */
		public Column(String heading, int share) {
			this(heading, share, Math.max(LEAST_WIDTH, heading.length() * LETTER_WIDTH));
		}
	}

	/** How lines are shown and picked. */
	public enum Manner {
		/** All unfolded, in the order they are given; one is picked at a time. A line is the same while it says the same. */
		READ,
		/**
		 * Unfolded by whoever wants to see more; several can be picked. A click on a heading sorts by it, another one the other
		 * way, a third as given. A line is the same while its first and last cell are, whatever it counts.
		 */
		COUNTED
	}

	/** @param name of the list for those who have it read aloud */
	public RowTree(Composite parent, String name, List<Column> columns, Manner manner) {
		this.manner = manner;
		pane = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(pane, (manner == Manner.COUNTED ? SWT.MULTI : SWT.SINGLE) | SWT.FULL_SELECTION | SWT.BORDER);
		viewer.setUseHashlookup(true);
		viewer.setComparer(new SameBy<>(Row.class, manner == Manner.READ ? Row::cells : Row::ends));
		viewer.setContentProvider(new Branches<>(Row.class, r -> r.below(lackingOnly, search)) {
			@Override
			public Object getParent(Object row) {
				return rows.stream().filter(r -> r.below().stream().anyMatch(b -> b == row)).findFirst().orElse(null);
			}
		});
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
		layout.setColumnData(added.getColumn(), new ColumnWeightData(column.share(), column.least()));
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
		if (manner == Manner.COUNTED) {
			HeadingSort.on(viewer, added.getColumn(), (a, b) -> ((Row) a).compare((Row) b, at));
		}
	}

	/** @return what holds the list */
	public Composite control() {
		return pane;
	}

	/** @return the list */
	public TreeViewer viewer() {
		return viewer;
	}

	/** Tells {@code picked} what the picked line is about, empty when nothing, and {@code opened} when a line is opened. */
	public void onPick(Consumer<Optional<Object>> picked, Consumer<Object> opened) {
		viewer.addPostSelectionChangedListener(e -> picked.accept(picked()));
		viewer.addOpenListener(e -> picked().ifPresent(opened));
	}

	/** @return what the picked line is about, the first one of several */
	public Optional<Object> picked() {
		return pickedRows().stream().findFirst().flatMap(Row::about);
	}

	/** @return every picked line */
	public List<Row> pickedRows() {
		return Arrays.stream(viewer.getStructuredSelection().toArray()).map(Row.class::cast).toList();
	}

	/** Picks the line that is about {@code wanted}, among those at the top. */
	public void pick(Object wanted) {
		rows.stream().filter(r -> r.about().filter(wanted::equals).isPresent()).findFirst()
				.ifPresent(r -> viewer.setSelection(new StructuredSelection(r), true));
	}

	/** What is unfolded and picked stays so where it still is there. */
	public void show(List<Row> now) {
		rows = now;
		refresh();
	}

	/** Shows only lines that hold all of {@code words}, and what belongs to them. @param lacking only where something is wanting */
	public void filter(boolean lacking, String words) {
		lackingOnly = lacking;
		search = words;
		refresh();
	}

	private void refresh() {
		viewer.getControl().setRedraw(false);
		try {
			Object[] unfolded = viewer.getExpandedElements();
			StructuredSelection picked = (StructuredSelection) viewer.getStructuredSelection();
			viewer.setInput(rows.stream().filter(r -> r.shown(lackingOnly, search)).toList());
			if (manner == Manner.COUNTED && search.isBlank()) {
				viewer.setExpandedElements(unfolded);
			} else {
				viewer.expandAll();
			}
			viewer.setSelection(picked);
			ColumnWidths.fit(viewer.getTree());
		} finally {
			viewer.getControl().setRedraw(true);
		}
	}
}
