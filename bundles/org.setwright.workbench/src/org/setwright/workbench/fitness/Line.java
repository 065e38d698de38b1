package org.setwright.workbench.fitness;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Letters;

/**
 * A line of a list, ready to be shown.
 *
 * @param sign before its first cell
 * @param cells one for each column; a last one may be missing
 * @param lacking whether something is wanting here, so that it stays when only that is shown
 * @param about what it is about; empty when there is nothing to open
 * @param below its lines
 */
record Line(Icon sign, List<String> cells, boolean lacking, Optional<Object> about, List<Line> below) {
	Line {
		cells = List.copyOf(cells);
		below = List.copyOf(below);
	}

	/** @return what stands in this column, from 0 */
	String cell(int column) {
		return column < cells.size() ? cells.get(column) : ""; //$NON-NLS-1$
	}

	/** @return the lines below that are shown; all of them when this line itself is found */
	List<Line> below(boolean lackingOnly, String search) {
		boolean found = found(search);
		return below.stream().filter(l -> (!lackingOnly || l.lacking) && (found || l.found(search))).toList();
	}

	/** @return whether it is shown, itself or for what is below it */
	boolean shown(boolean lackingOnly, String search) {
		return (!lackingOnly || lacking) && (found(search) || below.stream().anyMatch(l -> l.found(search)));
	}

	private boolean found(String search) {
		String all = String.join("\n", cells).toLowerCase(Locale.ROOT); //$NON-NLS-1$
		for (String word : search.toLowerCase(Locale.ROOT).strip().split("\\s+")) { //$NON-NLS-1$
			if (!all.contains(word)) {
				return false;
			}
		}
		return true;
	}

	/** @return below 0 when this line comes before {@code other} by this column: numbers by their size, words by their letters */
	int compare(Line other, int column) {
		return Letters.compare(cell(column), other.cell(column));
	}
}
