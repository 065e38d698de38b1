package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.actions.ActionFactory;
import org.setwright.book.sheet.TableSheet;
import org.setwright.workbench.look.HelpLine;
import org.setwright.workbench.tables.RowMarks.Note;
import org.setwright.workbench.twopage.OwnPage;
import org.setwright.workbench.uses.Pointed;
import org.setwright.writing.uses.Thing;

/** The grid with what is done to its rows, what is said about them, and the line that helps. */
final class GridPage implements OwnPage, GridDesk, GridButtons.Deeds {
	private static final int[] SHARES = { 74, 26 };
	private final TableDocument table;
	private final BiConsumer<Integer, Integer> looked;
	private final Composite page;
	private final GridButtons buttons;
	private final GridTable grid;
	private final NoteList notes;
	private final HelpLine help;
	private final GridClipboard clipboard;
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
		clipboard = new GridClipboard(table, grid, this::picked);
		notes = new NoteList(sash, this::goTo);
		sash.setWeights(SHARES);
		help = new HelpLine(page);
		grid.viewer().addPostSelectionChangedListener(e -> enable());
		notes.viewer().addPostSelectionChangedListener(e -> enable());
		grid.viewer().getTable().addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.INSERT) {
				add();
			} else if (e.keyCode == SWT.DEL) {
				clipboard.delete();
			}
		});
		say(Messages.GridPage_hint, false);
		show();
	}

	@Override
	public Control control() {
		return page;
	}

	/** Copy, paste and delete act on cells. */
	@Override
	public Map<ActionFactory, Runnable> deeds() {
		return Map.of(ActionFactory.COPY, clipboard::copy, ActionFactory.PASTE, clipboard::paste, ActionFactory.DELETE, clipboard::delete);
	}

	/** @return the control that shows the rows */
	Control rows() {
		return grid.viewer().getTable();
	}

	/** What the cell with the cursor, or the heading whose menu is open, stands for. */
	@Override
	public Optional<Thing> pointed() {
		RowMarks.Cell at = grid.pointed();
		return Pointed.inCell(table.path(), at.row(), at.column());
	}

	@Override
	public void setFocus() {
		grid.viewer().getTable().setFocus();
	}

	@Override
	public void show() {
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
		String whole = column < 0 ? aboutRow(row) : table.marks().headings().get(column).meaning();
		say(wrong.isEmpty() ? whole.isEmpty() ? Messages.GridPage_hint : whole : wrong, !wrong.isEmpty());
		looked.accept(row, column);
	}

	private String aboutRow(int row) {
		return table.marks().notes().stream().filter(n -> n.rows().contains(row)).map(Note::sentence).collect(Collectors.joining(" ")); //$NON-NLS-1$
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
}
