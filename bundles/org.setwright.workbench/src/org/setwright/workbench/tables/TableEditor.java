package org.setwright.workbench.tables;

import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IFileEditorInput;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.ide.IGotoMarker;
import org.eclipse.ui.part.MultiPageEditorPart;
import org.eclipse.ui.texteditor.ITextEditor;
import org.setwright.book.Position;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;

/** Edits a look-up table: as a grid, or as the text it is kept in. Both are one and the same; undo goes through both. */
public final class TableEditor extends MultiPageEditorPart implements Places.LinePlaces {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.tableEditor"; //$NON-NLS-1$
	private static final int GRID = 0;
	private static final int TEXT = 1;
	private final TextEditor text = new TableTextEditor();
	private TableDocument table;
	private GridPage grid;

	@Override
	public void init(IEditorSite site, IEditorInput input) throws PartInitException {
		super.init(site, input);
		setPartName(input.getName());
		setTitleToolTip(input.getToolTipText());
	}

	@Override
	protected void createPages() {
		try {
			addPage(text, getEditorInput());
		} catch (PartInitException e) {
			throw new IllegalStateException("a text editor opens every file", e); //$NON-NLS-1$
		}
		IDocument document = text.getDocumentProvider().getDocument(getEditorInput());
		table = new TableDocument(path(), document, BookTexts::catalogue);
		grid = new GridPage(getContainer(), table,
				(row, column) -> desk().pickRule("table " + table.name() + ", row " + (row + 1))); //$NON-NLS-1$ //$NON-NLS-2$
		addPage(GRID, grid.control());
		setPageText(GRID, Messages.TableEditor_grid);
		setPageText(TEXT, Messages.TableEditor_text);
		setActivePage(table.sheet().sound() ? GRID : TEXT);
		follow(document);
	}

	/** @return the page that shows the text */
	ITextEditor text() {
		return text;
	}

	/** @return the page that shows the grid */
	GridPage grid() {
		return grid;
	}

	private Desk desk() {
		return getSite().getService(Desk.class);
	}

	private String path() {
		return getEditorInput() instanceof IFileEditorInput file
				? BookProject.path(file.getFile().getFullPath()).orElse(getEditorInput().getName()) : getEditorInput().getName();
	}

	private void follow(IDocument document) {
		IDocumentListener listener = new IDocumentListener() {
			@Override
			public void documentAboutToBeChanged(DocumentEvent event) {
				// only what it becomes is of interest
			}

			@Override
			public void documentChanged(DocumentEvent event) {
				if (getActivePage() == GRID) {
					grid.show();
				}
			}
		};
		document.addDocumentListener(listener);
		grid.control().addDisposeListener(e -> document.removeDocumentListener(listener));
	}

	@Override
	protected void pageChange(int page) {
		super.pageChange(page);
		if (page == GRID) {
			grid.show();
		}
	}

	@Override
	public void setFocus() {
		if (getActivePage() == GRID) {
			grid.setFocus();
		} else {
			super.setFocus();
		}
	}

	/** A place in a row is shown in the grid, any other in the text. */
	@Override
	public void show(Position at) {
		for (int row = table.sheet().rows() - 1; table.sheet().sound() && row >= 0; row--) {
			if (table.sheet().line(row) <= at.line()) {
				setActivePage(GRID);
				grid.show(row, at.column() <= 0 || table.sheet().line(row) < at.line() ? 0 : table.sheet().column(row, at.column()));
				return;
			}
		}
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		grid.control().getShell().forceFocus();
		text.doSave(monitor);
	}

	@Override
	public void doSaveAs() {
		text.doSaveAs();
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public <T> T getAdapter(Class<T> wanted) {
		if (wanted == ITextEditor.class) {
			return wanted.cast(text);
		} else if (wanted == IGotoMarker.class) {
			return wanted.cast((IGotoMarker) this::goTo);
		}
		return super.getAdapter(wanted);
	}

	private void goTo(IMarker marker) {
		int line = marker.getAttribute(IMarker.LINE_NUMBER, 0);
		int start = marker.getAttribute(IMarker.CHAR_START, -1);
		IDocument document = text.getDocumentProvider().getDocument(getEditorInput());
		try {
			show(new Position(table.name(), line, line > 0 && start >= 0 ? start - document.getLineOffset(line - 1) + 1 : 0));
		} catch (org.eclipse.jface.text.BadLocationException changedMeanwhile) {
			show(new Position(table.name(), line, 0));
		}
	}
}
