package org.setwright.workbench.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.setwright.book.sheet.TableSheet;

/**
 * In which order rows are shown.
 *
 * @param column by which they are sorted; -1 for the order of the file
 * @param falling whether the largest comes first
 */
record RowOrder(int column, boolean falling) {
	/** As in the file. */
	static final RowOrder AS_WRITTEN = new RowOrder(-1, false);
	private static final Pattern NUMBER = Pattern.compile("[<>=!]*\\s*([-+]?\\d[\\d,]*(?:\\.\\d+)?)"); //$NON-NLS-1$

	/** @return what a click on the heading of {@code clicked} makes of this: rising, falling, as written */
	RowOrder clicked(int clicked) {
		return clicked != column ? new RowOrder(clicked, false) : falling ? AS_WRITTEN : new RowOrder(clicked, true);
	}

	/** @return the rows of {@code sheet} in this order; those with an empty cell come last, those that are equal as written */
	List<Integer> of(TableSheet sheet) {
		List<Integer> rows = new ArrayList<>(IntStream.range(0, sheet.rows()).boxed().toList());
		if (column >= 0) {
			Comparator<String> order = falling ? RowOrder.byText().reversed() : byText();
			rows.sort(Comparator.comparing((Integer r) -> sheet.cell(r, column).isEmpty()).thenComparing(r -> sheet.cell(r, column), order));
		}
		return rows;
	}

	/** Numbers by size and before words, words by the alphabet. */
	private static Comparator<String> byText() {
		return Comparator.<String>comparingDouble(RowOrder::number).thenComparing(String.CASE_INSENSITIVE_ORDER);
	}

	private static double number(String text) {
		Matcher number = NUMBER.matcher(text);
		return number.lookingAt() ? Double.parseDouble(number.group(1).replace(",", "")) : Double.MAX_VALUE; //$NON-NLS-1$ //$NON-NLS-2$
	}
}
