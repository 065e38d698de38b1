package org.setwright.workbench.look;

import java.util.Comparator;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.jface.layout.AbstractColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Keeps the columns of a list as wide as what stands in them, in whatever size of type, so that nothing is cut off: where
 * there is too little room the list scrolls sideways. Columns with more than about forty letters share what room is left
 * over; what is cut off even so is shown whole when the pointer rests on it, and by {@link WholeLine}. The list has a column
 * layout.
 */
public final class ColumnWidths {
	private static final String WEIGHT = ColumnWidths.class.getName();
	private static final String LAID_OUT = "org.eclipse.jface.LAYOUT_DATA"; //$NON-NLS-1$
	private static final int MOST_LETTERS = 40;
	private static final int LEAST_LETTERS = 8;
	private static final int LETTERS_AROUND = 3;
	private static final int SIGN = 24;
	/** How much wider bold headings are, in tenths. */
	private static final int BOLD = 12;
	/** Of the texts of a column only the longest are measured: the widest is among them. */
	private static final int MEASURED = 8;

	private ColumnWidths() {
	}

	/** Fits the columns to the rows there are now. */
	public static void fit(Table table) {
		fit(table, MOST_LETTERS);
	}

	/** Fits the columns to the rows there are now, however long they are: for texts that are read line by line. */
	public static void fitWhole(Table table) {
		fit(table, Short.MAX_VALUE);
	}

	private static void fit(Table table, int letters) {
		TableColumn[] columns = table.getColumns();
		fit(table, columns, letters, i -> columns[i].getText(), i -> Stream.of(table.getItems()).map(item -> text(item, i)));
	}

	/** Fits the columns to the rows there are now, folded ones too. */
	public static void fit(Tree tree) {
		TreeColumn[] columns = tree.getColumns();
		fit(tree, columns, MOST_LETTERS, i -> columns[i].getText(), i -> Stream.of(tree.getItems()).flatMap(ColumnWidths::all).map(item -> text(item, i)));
	}

	/** Fits the columns of a table that has no column layout. */
	public static void pack(Table table) {
		GC gc = new GC(table);
		try {
			double letter = gc.getFontMetrics().getAverageCharacterWidth();
			for (TableColumn column : table.getColumns()) {
				column.pack();
				column.setWidth((int) Math.max(LEAST_LETTERS * letter, Math.min(MOST_LETTERS * letter, column.getWidth() + letter)));
			}
		} finally {
			gc.dispose();
		}
	}

	private static Stream<TreeItem> all(TreeItem item) {
		return Stream.concat(Stream.of(item), Stream.of(item.getItems()).flatMap(ColumnWidths::all));
	}

	private static Text text(TableItem item, int column) {
		return new Text(item.getText(column), item.getImage(column) != null ? SIGN : 0);
	}

	private static Text text(TreeItem item, int column) {
		int depth = 0;
		for (TreeItem above = item; column == 0 && above != null; above = above.getParentItem()) {
			depth++;
		}
		return new Text(item.getText(column), (item.getImage(column) != null ? SIGN : 0) + depth * SIGN);
	}

	/** What stands in a cell. @param besides room for sign and indent, in pixels */
	private record Text(String words, int besides) {
	}

	private static void fit(Scrollable list, Item[] columns, int letters, IntFunction<String> heading, IntFunction<Stream<Text>> texts) {
		GC gc = new GC(list);
		try {
			double letter = gc.getFontMetrics().getAverageCharacterWidth();
			int around = (int) (LETTERS_AROUND * letter);
			int most = (int) (letters * letter);
			int[] content = IntStream.range(0, columns.length).map(i -> widest(gc, texts.apply(i))).toArray();
			boolean anyCut = IntStream.of(content).anyMatch(c -> c > most);
			boolean changed = false;
			for (int i = 0; i < columns.length; i++) {
				int headed = Math.max((int) (LEAST_LETTERS * letter), gc.textExtent(heading.apply(i)).x * BOLD / 10);
				int share = !anyCut ? share(columns[i]) : content[i] > most ? content[i] : 0;
				changed |= set(list, columns[i], share, Math.max(headed, Math.min(content[i], most)) + around);
			}
			if (changed) {
				list.getParent().layout();
			}
		} finally {
			gc.dispose();
		}
	}

	private static int widest(GC gc, Stream<Text> texts) {
		return texts.sorted(Comparator.comparingInt((Text t) -> t.words().length()).reversed()).limit(MEASURED)
				.mapToInt(t -> gc.textExtent(t.words()).x + t.besides()).max().orElse(0);
	}

	/** @return the share of the width that the column was made with */
	private static int share(Item column) {
		if (column.getData(WEIGHT) == null && column.getData(LAID_OUT) instanceof ColumnWeightData data) {
			column.setData(WEIGHT, data.weight);
		}
		return column.getData(WEIGHT) instanceof Integer share ? share : 0;
	}

	private static boolean set(Scrollable list, Item column, int share, int least) {
		share(column);
		if (!(list.getParent().getLayout() instanceof AbstractColumnLayout layout) || !(column.getData(LAID_OUT) instanceof ColumnWeightData data)
				|| data.minimumWidth == least && data.weight == share) {
			return false;
		}
		layout.setColumnData(column, new ColumnWeightData(share, least, true));
		return true;
	}
}
