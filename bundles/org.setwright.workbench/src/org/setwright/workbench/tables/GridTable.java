package org.setwright.workbench.tables;

import java.util.List;
import java.util.function.IntConsumer;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;
import org.setwright.book.sheet.TableSheet;
import org.setwright.workbench.look.ColumnWidths;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Lines;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;

/** The rows of the table. Elements are the numbers of rows, from 0; the first column shows marks, the others cells. */
final class GridTable {
	/** Letters of room for marks, which come and go. */
	private static final int MARKS = 22;
	private final TableViewer viewer;
	private final TableViewerFocusCellManager focus;
	private final SpokenCell spoken;
	private final PointedHeading heading;
	private final GridDesk desk;
	private final IntConsumer sorted;
	private List<String> headings = List.of();

	/** @param sorted told the column on whose heading somebody clicked */
	GridTable(Composite parent, GridDesk desk, IntConsumer sorted) {
		this.desk = desk;
		this.sorted = sorted;
		viewer = new TableViewer(parent, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(ArrayContentProvider.getInstance());
		viewer.getTable().setHeaderVisible(true);
		viewer.getTable().setLinesVisible(true);
		ColumnViewerToolTipSupport.enableFor(viewer);
		Spoken.as(viewer.getTable(), Messages.GridTable_name);
		spoken = new SpokenCell(viewer.getTable());
		focus = new TableViewerFocusCellManager(viewer, new CellFrame(viewer));
		TableViewerEditor.create(viewer, focus, new Activation(viewer), ColumnViewerEditor.TABBING_HORIZONTAL
				| ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR | ColumnViewerEditor.TABBING_VERTICAL | ColumnViewerEditor.KEYBOARD_ACTIVATION);
		viewer.getTable().addListener(SWT.KeyUp, e -> looked());
		viewer.getTable().addListener(SWT.MouseUp, e -> looked());
		viewer.addPostSelectionChangedListener(e -> looked());
		heading = new PointedHeading(viewer.getTable());
	}

	/** @return the cell with the cursor; of row -1 when the menu of a heading was opened last */
	RowMarks.Cell pointed() {
		return heading.column() > 0 ? new RowMarks.Cell(-1, heading.column() - 1) : cursor();
	}

	TableViewer viewer() {
		return viewer;
	}

	/** Shows the rows in {@code order}. */
	void show(List<Integer> order, RowOrder by) {
		TableSheet sheet = desk.table().sheet();
		boolean others = !sheet.headings().equals(headings);
		if (others) {
			headings = sheet.headings();
			columns();
		}
		Object[] picked = viewer.getStructuredSelection().toArray();
		viewer.setInput(order);
		viewer.setSelection(new StructuredSelection(picked));
		TableColumn[] columns = viewer.getTable().getColumns();
		viewer.getTable().setSortColumn(by.column() < 0 ? null : columns[by.column() + 1]);
		viewer.getTable().setSortDirection(by.column() < 0 ? SWT.NONE : by.falling() ? SWT.DOWN : SWT.UP);
		if (others) {
			ColumnWidths.pack(viewer.getTable());
			TableColumn marks = viewer.getTable().getColumn(0);
			marks.setWidth(Math.max(marks.getWidth(), Type.room(viewer.getTable(), MARKS, 1).x));
		}
	}

	/** @return the row and column with the cursor, from 0; column -1 for the marks, row -1 when there is none */
	RowMarks.Cell cursor() {
		ViewerCell cell = focus.getFocusCell();
		Object picked = viewer.getStructuredSelection().getFirstElement();
		int row = cell != null ? (Integer) cell.getElement() : picked == null ? -1 : (Integer) picked;
		return new RowMarks.Cell(row, cell == null ? -1 : cell.getColumnIndex() - 1);
	}

	/** Puts the cursor into a cell. */
	void show(int row, int column) {
		viewer.setSelection(new StructuredSelection(row), true);
		if (column >= 0 && viewer.testFindItem(row) != null) {
			viewer.getTable().showColumn(viewer.getTable().getColumn(column + 1));
		}
		viewer.getTable().setFocus();
		looked();
	}

	private void looked() {
		RowMarks.Cell at = cursor();
		if (at.row() >= 0 && at.row() < desk.table().sheet().rows()) {
			spoken.at(desk.table(), at.row(), at.column());
			desk.looked(at.row(), at.column());
		}
	}

	private void columns() {
		for (TableColumn old : viewer.getTable().getColumns()) {
			old.dispose();
		}
		column(-1, Messages.GridTable_marks, Messages.GridTable_marksExplained);
		for (int i = 0; i < headings.size(); i++) {
			column(i, headings.get(i), Lines.broken(desk.table().marks().headings().get(i).meaning()));
		}
	}

	private void column(int index, String title, String explained) {
		TableViewerColumn column = new TableViewerColumn(viewer, SWT.LEFT);
		column.getColumn().setText(title.replace("&", "&&")); //$NON-NLS-1$ //$NON-NLS-2$
		column.getColumn().setToolTipText(explained);
		column.setLabelProvider(new Label(index));
		if (index >= 0) {
			column.getColumn().addListener(SWT.Selection, e -> sorted.accept(index));
			column.setEditingSupport(new CellEditing(viewer, desk, index));
		}
	}

	/** What stands in a column. What is wrong has a sign and, on the help line and in the list below, a sentence. */
	private final class Label extends ColumnLabelProvider {
		private final int column;

		Label(int column) {
			this.column = column;
		}

		@Override
		public String getText(Object row) {
			String marks = column < 0 ? desk.table().marks().inShort((Integer) row) : ""; //$NON-NLS-1$
			return column >= 0 ? desk.table().sheet().cell((Integer) row, column)
					: (Integer) row + 1 + (marks.isEmpty() ? "" : "   " + marks); //$NON-NLS-1$ //$NON-NLS-2$
		}

		@Override
		public Image getImage(Object row) {
			if (column >= 0) {
				return desk.table().marks().cell((Integer) row, column).isEmpty() ? null : Icon.PROBLEM.image();
			}
			return desk.table().marks().gravest((Integer) row).map(sort -> NoteList.sign(sort).image()).orElse(null);
		}

		@Override
		public String getToolTipText(Object row) {
			String wrong = column < 0 ? "" : String.join("\n", desk.table().marks().cell((Integer) row, column)); //$NON-NLS-1$ //$NON-NLS-2$
			String text = wrong.isEmpty() ? getText(row) : wrong;
			return text.isEmpty() ? null : Lines.broken(text);
		}
	}

	/** A double click, Enter, F2 or simply writing begins to write into a cell. */
	private static final class Activation extends ColumnViewerEditorActivationStrategy {
		Activation(TableViewer viewer) {
			super(viewer);
		}

		@Override
		protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
			return switch (event.eventType) {
				case ColumnViewerEditorActivationEvent.KEY_PRESSED -> (event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0 && begins(event);
				case ColumnViewerEditorActivationEvent.TRAVERSAL, ColumnViewerEditorActivationEvent.PROGRAMMATIC,
						ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION -> true;
				default -> false;
			};
		}

		private static boolean begins(ColumnViewerEditorActivationEvent key) {
			return key.keyCode == SWT.CR || key.keyCode == SWT.KEYPAD_CR || key.keyCode == SWT.F2 || key.character > ' ' && key.character != SWT.DEL;
		}
	}
}
