package org.setwright.workbench.tables;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;

/** Copies rows to, and pastes them from, a spreadsheet. While somebody writes into a cell, it acts on what is written. */
final class GridClipboard {
	private final TableDocument table;
	private final GridTable grid;
	private final Supplier<List<Integer>> picked;

	/** @param picked the rows picked, in the order of the file */
	GridClipboard(TableDocument table, GridTable grid, Supplier<List<Integer>> picked) {
		this.table = table;
		this.grid = grid;
		this.picked = picked;
	}

	/** Empties the cell with the cursor. */
	void delete() {
		RowMarks.Cell at = grid.cursor();
		if (!writing(t -> t.setText(""), c -> c.setText("")) && at.row() >= 0 && at.column() >= 0) { //$NON-NLS-1$ //$NON-NLS-2$
			table.write(at.row(), at.column(), ""); //$NON-NLS-1$
		}
	}

	/** Puts the rows picked on the clipboard, cells separated by tabs, as spreadsheets take them. */
	void copy() {
		if (writing(Text::copy, CCombo::copy) || picked.get().isEmpty()) {
			return;
		}
		String text = picked.get().stream()
				.map(r -> table.sheet().row(r).stream().map(GridClipboard::quoted).collect(Collectors.joining("\t"))) //$NON-NLS-1$
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		Clipboard clipboard = new Clipboard(display());
		clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}

	/** Puts what was copied in a spreadsheet into the cells from the cursor on; whole rows go into whole rows. */
	void paste() {
		if (writing(Text::paste, CCombo::paste) || !table.sheet().sound()) {
			return;
		}
		Clipboard clipboard = new Clipboard(display());
		Object copied = clipboard.getContents(TextTransfer.getInstance());
		clipboard.dispose();
		if (copied instanceof String text) {
			RowMarks.Cell at = grid.cursor();
			boolean whole = text.lines().findFirst().orElse("").split("\t", -1).length == table.sheet().headings().size(); //$NON-NLS-1$ //$NON-NLS-2$
			table.become(table.sheet().pasted(at.row() < 0 ? table.sheet().rows() : at.row(), whole ? 0 : Math.max(0, at.column()), text));
		}
	}

	/** While somebody writes into a cell, the menus act on what is written. @return whether somebody does */
	private boolean writing(Consumer<Text> onText, Consumer<CCombo> onCombo) {
		Control focus = display().getFocusControl();
		Optional<CCombo> combo = Optional.ofNullable(focus).map(GridClipboard::combo);
		combo.ifPresentOrElse(onCombo, () -> {
			if (focus instanceof Text text) {
				onText.accept(text);
			}
		});
		return combo.isPresent() || focus instanceof Text;
	}

	private static String quoted(String cell) {
		boolean quotes = cell.contains("\t") || cell.contains("\n") || cell.startsWith("\""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$
		return quotes ? '"' + cell.replace("\"", "\"\"") + '"' : cell; //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static CCombo combo(Control focus) {
		return focus instanceof CCombo it ? it : focus.getParent() instanceof CCombo its ? its : null;
	}

	private Display display() {
		return grid.viewer().getTable().getDisplay();
	}
}
