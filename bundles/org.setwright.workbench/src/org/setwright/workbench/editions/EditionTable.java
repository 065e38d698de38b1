package org.setwright.workbench.editions;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.editions.kept.Kept;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.SameBy;

/** The work in hand, and the editions of the open line. */
final class EditionTable {
	private static final int LEAST_WIDTH = 70;
	private static final int DATE_WIDTH = 150;
	private final Composite pane;
	private final TableViewer viewer;
	private List<EditionLine> lines = List.of();

	/** @param picked called whenever something else is picked */
	EditionTable(Composite parent, Runnable picked) {
		pane = new Composite(parent, SWT.NONE);
		viewer = new TableViewer(pane, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.setComparer(new SameBy<>(EditionLine.class, line -> line.kept().map(Kept::id)));
		viewer.getTable().setHeaderVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		TableColumnLayout layout = new TableColumnLayout();
		add(layout, Messages.EditionTable_when, 0, 10);
		add(layout, Messages.EditionTable_who, 1, 20);
		add(layout, Messages.EditionTable_what, 2, 45);
		add(layout, Messages.EditionTable_signed, 3, 25);
		pane.setLayout(layout);
		Spoken.as(viewer.getControl(), Messages.EditionTable_name);
		viewer.addPostSelectionChangedListener(e -> picked.run());
	}

	private void add(TableColumnLayout layout, String heading, int at, int share) {
		TableViewerColumn added = new TableViewerColumn(viewer, SWT.LEFT);
		added.getColumn().setText(heading);
		layout.setColumnData(added.getColumn(), new ColumnWeightData(share, at == 0 ? DATE_WIDTH : LEAST_WIDTH));
		added.setLabelProvider(new ColumnLabelProvider() {
			@Override
			public String getText(Object line) {
				return ((EditionLine) line).cells().get(at);
			}

			@Override
			public String getToolTipText(Object line) {
				return Lines.broken(at == 2 ? ((EditionLine) line).message() : getText(line));
			}

			@Override
			public Image getImage(Object line) {
				return ((EditionLine) line).sign(at).map(Icon::image).orElse(null);
			}
		});
	}

	Composite control() {
		return pane;
	}

	TableViewer viewer() {
		return viewer;
	}

	/** What is picked stays so; at first it is the work in hand when some of it is not kept, else the last edition. */
	void show(Ledger ledger) {
		StructuredSelection picked = (StructuredSelection) viewer.getStructuredSelection();
		lines = EditionLine.of(ledger);
		viewer.setInput(lines);
		ColumnWidths.fit(viewer.getTable());
		List<?> before = Arrays.asList(picked.toArray());
		List<EditionLine> still = lines.stream().filter(l -> before.stream().anyMatch(p -> ((EditionLine) p).kept().equals(l.kept()))).toList();
		boolean work = ledger.history().isEmpty() || !ledger.work().notKept().isEmpty();
		viewer.setSelection(new StructuredSelection(still.isEmpty() ? List.of(lines.get(work ? 0 : 1)) : still), true);
	}

	/** Shows nothing and forgets what was picked: another book comes. */
	void clear() {
		lines = List.of();
		viewer.setInput(lines);
	}

	/** Picks these; an empty one is the work in hand. */
	void pick(List<Optional<Kept>> editions) {
		viewer.setSelection(new StructuredSelection(lines.stream().filter(l -> editions.contains(l.kept())).toList()), true);
	}

	/** @return what is picked; an empty one is the work in hand */
	List<Optional<Kept>> picked() {
		return Arrays.stream(viewer.getStructuredSelection().toArray()).map(l -> ((EditionLine) l).kept()).toList();
	}
}
