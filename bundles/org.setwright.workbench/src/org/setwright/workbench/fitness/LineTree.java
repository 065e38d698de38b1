package org.setwright.workbench.fitness;

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
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.TreeColumn;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;

/** Lines with columns. A click on a heading sorts by it, another one the other way, a third as in the book. */
final class LineTree {
	private static final int LEAST_WIDTH = 50;
	private static final int LETTER_WIDTH = 9;
	private final Composite pane;
	private final TreeViewer viewer;
	private List<Line> lines = List.of();
	private boolean lackingOnly;
	private String search = ""; //$NON-NLS-1$

	/** One column. @param share of the width @param least pixels it needs */
	record Column(String heading, int share, int least) {
		/** As wide as its heading at least. */
		Column(String heading, int share) {
			this(heading, share, Math.max(LEAST_WIDTH, heading.length() * LETTER_WIDTH));
		}
	}

	LineTree(Composite parent, String name, List<Column> columns) {
		pane = new Composite(parent, SWT.NONE);
		viewer = new TreeViewer(pane, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
		viewer.setUseHashlookup(true);
		viewer.setComparer(new SameLine());
		viewer.setContentProvider(new Contents());
		viewer.getTree().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		TreeColumnLayout layout = new TreeColumnLayout();
		columns.forEach(c -> add(layout, c, columns.indexOf(c)));
		pane.setLayout(layout);
		Spoken.as(viewer.getControl(), name);
	}

	private void add(TreeColumnLayout layout, Column column, int at) {
		TreeViewerColumn added = new TreeViewerColumn(viewer, SWT.LEFT);
		added.getColumn().setText(column.heading());
		layout.setColumnData(added.getColumn(), new ColumnWeightData(column.share(), column.least()));
		added.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object line) {
				return ((Line) line).cell(at);
			}

			@Override
			public String getToolTipText(Object line) {
				return Lines.broken(((Line) line).cell(at));
			}

			@Override
			public Image getImage(Object line) {
				return at == 0 ? ((Line) line).sign().image() : null;
			}
		});
		added.getColumn().addListener(SWT.Selection, (Event e) -> sort(added.getColumn(), at));
	}

	private void sort(TreeColumn clicked, int column) {
		boolean same = viewer.getTree().getSortColumn() == clicked;
		int before = same ? viewer.getTree().getSortDirection() : SWT.NONE;
		int now = before == SWT.NONE ? SWT.UP : before == SWT.UP ? SWT.DOWN : SWT.NONE;
		viewer.getTree().setSortColumn(now == SWT.NONE ? null : clicked);
		viewer.getTree().setSortDirection(now);
		viewer.setComparator(now == SWT.NONE ? null : new ViewerComparator() {
			@Override
			public int compare(Viewer shown, Object a, Object b) {
				int order = ((Line) a).compare((Line) b, column);
				return now == SWT.UP ? order : -order;
			}
		});
	}

	Composite control() {
		return pane;
	}

	TreeViewer viewer() {
		return viewer;
	}

	/** Tells {@code opened} what a line is about when it is opened, and {@code picked} when it is picked. */
	void onPick(Consumer<Object> picked, Consumer<Object> opened) {
		viewer.addPostSelectionChangedListener(e -> picked().stream().findFirst().flatMap(Line::about).ifPresent(picked));
		viewer.addOpenListener(e -> picked().stream().findFirst().flatMap(Line::about).ifPresent(opened));
	}

	List<Line> picked() {
		return Arrays.stream(viewer.getStructuredSelection().toArray()).map(Line.class::cast).toList();
	}

	void show(List<Line> now) {
		lines = now;
		refresh();
	}

	void filter(boolean lacking, String words) {
		lackingOnly = lacking;
		search = words;
		refresh();
	}

	/** What is unfolded and picked stays so. */
	private void refresh() {
		viewer.getControl().setRedraw(false);
		try {
			Object[] unfolded = viewer.getExpandedElements();
			StructuredSelection picked = (StructuredSelection) viewer.getStructuredSelection();
			viewer.setInput(lines.stream().filter(l -> l.shown(lackingOnly, search)).toList());
			if (search.isBlank()) {
				viewer.setExpandedElements(unfolded);
			} else {
				viewer.expandAll();
			}
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
		public Object[] getChildren(Object line) {
			return ((Line) line).below(lackingOnly, search).toArray();
		}

		@Override
		public Object getParent(Object line) {
			return lines.stream().filter(l -> l.below().stream().anyMatch(b -> b == line)).findFirst().orElse(null);
		}

		@Override
		public boolean hasChildren(Object line) {
			return getChildren(line).length > 0;
		}
	}

	/** A line is the same line when it says the same thing in its first and last cell, whatever it counts. */
	private static final class SameLine implements IElementComparer {
		@Override
		public boolean equals(Object a, Object b) {
			return a instanceof Line one && b instanceof Line other ? key(one).equals(key(other)) : a.equals(b);
		}

		@Override
		public int hashCode(Object element) {
			return element instanceof Line line ? key(line).hashCode() : System.identityHashCode(element);
		}

		private static List<String> key(Line line) {
			return List.of(line.cell(0), Optional.of(line.cells()).filter(c -> !c.isEmpty()).map(c -> c.get(c.size() - 1)).orElse("")); //$NON-NLS-1$
		}
	}
}
