package org.setwright.book.history;

import org.setwright.book.Misfit;
import org.setwright.book.Position;
import org.setwright.book.Problem;

/**
 * What is wrong with a row, or with the whole file.
 *
 * @param at the line of the file in which the row ends
 * @param row as a spreadsheet counts: the headings are row 1; 0 when no row is meant
 * @param column the heading; empty when no single cell is meant
 * @param what what is wrong, one sentence
 * @param remedy what to do, one sentence
 */
public record Fault(Position at, int row, String column, String what, String remedy) {
	/** @return a fault that concerns no single row */
	static Fault of(Problem problem) {
		return new Fault(problem.at(), 0, "", problem.what(), problem.remedy());
	}

	/** @return the same as a problem, with its column named in the sentence */
	public Problem problem() {
		return Problem.error(at, (column.isEmpty() ? "" : "Column " + Misfit.quoted(column) + ": ") + what, remedy);
	}
}
