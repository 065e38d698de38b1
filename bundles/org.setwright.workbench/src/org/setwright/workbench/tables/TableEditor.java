package org.setwright.workbench.tables;

import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.widgets.Composite;
import org.setwright.book.Position;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.twopage.OwnPage;
import org.setwright.workbench.twopage.TwoPageEditor;
import org.setwright.workbench.uses.UseMenu;

/** Edits a look-up table: as a grid, or as the text it is kept in. Both are one and the same; undo goes through both. */
public final class TableEditor extends TwoPageEditor implements Places.LinePlaces {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.tableEditor"; //$NON-NLS-1$
	private TableDocument table;
	private GridPage grid;

	/** Made by the platform. */
	public TableEditor() {
		super(new TableTextEditor(), Messages.TableEditor_grid);
	}

	@Override
	protected OwnPage ownPage(Composite parent, IDocument document) {
		table = new TableDocument(path(), document, BookTexts::catalogue);
		grid = new GridPage(parent, table,
				(row, column) -> desk().pickRule("table " + table.name() + ", row " + (row + 1))); //$NON-NLS-1$ //$NON-NLS-2$
		UseMenu.on(grid.rows());
		return grid;
	}

	/** A grid can only be made of a sound table. */
	@Override
	protected boolean textFirst() {
		return !table.sheet().sound();
	}

	private Desk desk() {
		return getSite().getService(Desk.class);
	}

	/** A place in a row is shown in the grid, any other in the text. */
	@Override
	public void show(Position at) {
		for (int row = table.sheet().rows() - 1; table.sheet().sound() && row >= 0; row--) {
			if (table.sheet().line(row) <= at.line()) {
				showOwnPage();
				grid.show(row, at.column() <= 0 || table.sheet().line(row) < at.line() ? 0 : table.sheet().column(row, at.column()));
				return;
			}
		}
	}

	@Override
	protected void goTo(IMarker marker) {
		int line = marker.getAttribute(IMarker.LINE_NUMBER, 0);
		int start = marker.getAttribute(IMarker.CHAR_START, -1);
		try {
			show(new Position(table.name(), line, line > 0 && start >= 0 ? start - document().getLineOffset(line - 1) + 1 : 0));
		} catch (BadLocationException changedMeanwhile) {
			show(new Position(table.name(), line, 0));
		}
	}
}
