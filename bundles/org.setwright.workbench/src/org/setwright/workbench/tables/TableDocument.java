package org.setwright.workbench.tables;

import java.util.List;
import java.util.function.Supplier;
import org.eclipse.jface.text.IDocument;
import org.setwright.book.TableReader;
import org.setwright.book.TableText;
import org.setwright.book.sheet.TableSheet;
import org.setwright.engine.tables.TableLook;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.workbench.folder.TextChange;

/** The text of a table being edited, read as a sheet and changed row by row. Use it in the window's thread. */
final class TableDocument {
	private final String path;
	private final IDocument document;
	private final Supplier<Catalogue> catalogue;
	private Catalogue looked;
	private TableSheet sheet;
	private RowMarks marks;

	/** @param path of the table below the book folder @param catalogue gives what the book may speak of now */
	TableDocument(String path, IDocument document, Supplier<Catalogue> catalogue) {
		this.path = path;
		this.document = document;
		this.catalogue = catalogue;
	}

	/** @return where the table is, below the book folder */
	String path() {
		return path;
	}

	/** @return the name by which rules made of its rows begin */
	String name() {
		return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.csv$", ""); //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** @return what the text says now */
	TableSheet sheet() {
		String text = document.get();
		if (sheet == null || !sheet.text().equals(text) || !catalogue.get().equals(looked)) {
			looked = catalogue.get();
			sheet = TableSheet.of(text);
			marks = marks(sheet);
		}
		return sheet;
	}

	/** @return what is to be said about it now */
	RowMarks marks() {
		sheet();
		return marks;
	}

	/** @return what would be wrong with a cell if it said {@code says}; empty when nothing */
	String refusal(int row, int column, String says) {
		TableSheet changed = sheet().with(row, column, says);
		return changed.rows() == sheet().rows() ? String.join(" ", marks(changed).cell(row, column)) : ""; //$NON-NLS-1$ //$NON-NLS-2$
	}

	/** Makes {@code wanted} of the text, as one step to undo; untouched rows stay to the character. */
	void become(TableSheet wanted) {
		String before = document.get();
		if (!wanted.text().equals(before)) {
			TextChange.between(before, wanted.text()).in(document);
		}
	}

	/** Writes into a cell. A row whose last word goes this way goes with it. */
	void write(int row, int column, String says) {
		TableSheet now = sheet();
		TableSheet changed = now.with(row, column, says);
		become(changed.rows() < now.rows() ? now.without(List.of(row)) : changed);
	}

	private RowMarks marks(TableSheet of) {
		TableText read = TableReader.read(path, of.text());
		return RowMarks.of(read, TableLook.of(read.table(), catalogue.get()));
	}
}
