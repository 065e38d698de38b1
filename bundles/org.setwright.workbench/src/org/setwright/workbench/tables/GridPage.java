package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.setwright.book.sheet.TableSheet;
import org.setwright.workbench.look.HelpLine;
import org.setwright.workbench.tables.RowMarks.Note;

/** The grid with what is done to its rows, what is said about them, and the line that helps. */
final class GridPage implements GridDesk, GridButtons.Deeds {
	private static final int[] SHARES = { 74, 26 };
	private final TableDocument table;
	private final BiConsumer<Integer, Integer> looked;
	private final Composite page;
	private final GridButtons buttons;
	private final GridTable grid;
	private final NoteList notes;
	private final HelpLine help;
	private RowOrder order = RowOrder.AS_WRITTEN;

	/** @param looked told the row and column somebody looks at, from 0 */
	GridPage(Composite parent, TableDocument table, BiConsumer<Integer, Integer> looked) {
		this.table = table;
		this.looked = looked;
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(6, 6).spacing(0, 4).applyTo(page);
		buttons = new GridButtons(page, this);
		SashForm sash = new SashForm(page, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		grid = new GridTable(sash, this, this::headingClicked);
		notes = new NoteList(sash, this::goTo);
		sash.setWeights(SHARES);
		help = new HelpLine(page);
		grid.viewer().addPostSelectionChangedListener(e -> enable());
		notes.viewer().addPostSelectionChangedListener(e -> enable());
		grid.viewer().getTable().addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.INSERT) {
				add();
			} else if (e.keyCode == SWT.DEL) {
				delete();
			}
		});
		say(Messages.GridPage_hint, false);
		show();
	}

	Control control() {
		return page;
	}

	void setFocus() {
		grid.viewer().getTable().setFocus();
	}

	/** Shows what the text says now. */
	void show() {
		TableSheet sheet = table.sheet();
		if (order.column() >= sheet.headings().size()) {
			order = RowOrder.AS_WRITTEN;
		}
		grid.show(order.of(sheet), order);
		notes.show(table.marks().notes());
		if (!sheet.sound()) {
			say(Messages.GridPage_notSound, true);
		}
		enable();
	}

	/** Puts the cursor into a cell. @param row from 0 @param column from 0 */
	void show(int row, int column) {
		if (row >= 0 && row < table.sheet().rows()) {
			grid.show(row, column);
		}
	}

	private void enable() {
		boolean hole = notes.picked().flatMap(Note::offered).isPresent();
		buttons.enable(table.sheet().sound(), picked().size(), order.column() >= 0, hole);
	}

	private List<Integer> picked() {
		List<Integer> picked = new ArrayList<>();
		for (Object row : grid.viewer().getStructuredSelection().toArray()) {
			picked.add((Integer) row);
		}
		return picked.stream().filter(r -> r < table.sheet().rows()).sorted().toList();
	}

	private void headingClicked(int column) {
		order = order.clicked(column);
		show();
	}

	private void goTo(Note note) {
		if (!note.rows().isEmpty()) {
			grid.viewer().setSelection(new StructuredSelection(note.rows()), true);
			show(note.rows().get(0), note.column());
			grid.viewer().setSelection(new StructuredSelection(note.rows()));
		}
		say(note.sentence(), note.sort() == RowMarks.Sort.PROBLEM);
	}

	@Override
	public TableDocument table() {
		return table;
	}

	@Override
	public void say(String sentence, boolean mistake) {
		help.say(sentence, mistake);
	}

	@Override
	public void looked(int row, int column) {
		String wrong = column < 0 ? "" : String.join(" ", table.marks().cell(row, column)); //$NON-NLS-1$ //$NON-NLS-2$
		String whole = column < 0 ? table.marks().notes().stream().filter(n -> n.rows().contains(row)).map(Note::sentence).collect(Collectors.joining(" ")) //$NON-NLS-1$
				: table.marks().headings().get(column).meaning();
		say(wrong.isEmpty() ? whole.isEmpty() ? Messages.GridPage_hint : whole : wrong, !wrong.isEmpty());
		looked.accept(row, column);
	}

	@Override
	public void add() {
		List<Integer> picked = picked();
		int below = picked.isEmpty() ? table.sheet().rows() - 1 : picked.get(picked.size() - 1);
		insert(below, List.of());
	}

	@Override
	public void fill() {
		notes.picked().flatMap(Note::offered).ifPresent(cells -> insert(table.sheet().rows() - 1, cells));
	}

	private void insert(int below, List<String> known) {
		if (table.sheet().sound()) {
			table.become(table.sheet().withRow(below, NewRow.of(table.sheet(), table.marks().headings(), below, known)));
			grid.show(below + 1, 0);
		}
	}

	@Override
	public void remove() {
		table.become(table.sheet().without(picked()));
	}

	@Override
	public void move(int by) {
		int row = picked().get(0);
		int to = row + by;
		if (to >= 0 && to < table.sheet().rows()) {
			List<Integer> rows = new ArrayList<>(RowOrder.AS_WRITTEN.of(table.sheet()));
			rows.add(to, rows.remove(row));
			table.become(table.sheet().inOrder(rows));
			grid.show(to, -1);
		}
	}

	@Override
	public void keep() {
		List<Integer> rows = order.of(table.sheet());
		order = RowOrder.AS_WRITTEN;
		table.become(table.sheet().inOrder(rows));
		show();
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
		if (writing(Text::copy, CCombo::copy) || picked().isEmpty()) {
			return;
		}
		String text = picked().stream().map(r -> table.sheet().row(r).stream().map(GridPage::quoted).collect(Collectors.joining("\t"))) //$NON-NLS-1$
				.collect(Collectors.joining("\n")); //$NON-NLS-1$
		Clipboard clipboard = new Clipboard(page.getDisplay());
		clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
		clipboard.dispose();
	}

	/** Puts what was copied in a spreadsheet into the cells from the cursor on; whole rows go into whole rows. */
	void paste() {
		if (writing(Text::paste, CCombo::paste) || !table.sheet().sound()) {
			return;
		}
		Clipboard clipboard = new Clipboard(page.getDisplay());
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
		Control focus = page.getDisplay().getFocusControl();
		Optional<CCombo> combo = Optional.ofNullable(focus).map(c -> c instanceof CCombo it ? it : c.getParent() instanceof CCombo its ? its : null);
		combo.ifPresentOrElse(onCombo, () -> {
			if (focus instanceof Text text) {
				onText.accept(text);
			}
		});
		return combo.isPresent() || focus instanceof Text;
	}

	private static String quoted(String cell) {
		return cell.contains("\t") || cell.contains("\n") || cell.startsWith("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell; //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$
	}
}
