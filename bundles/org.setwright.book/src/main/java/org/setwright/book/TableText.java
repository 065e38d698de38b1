package org.setwright.book;

import java.util.List;

/**
 * What the text of a table file says.
 *
 * @param table what could be read; complete exactly when the text is sound
 * @param problems what is wrong, by position
 */
public record TableText(Table table, List<Problem> problems) {
	public TableText {
		problems = List.copyOf(problems);
	}

	/** @return whether all of it could be read */
	public boolean sound() {
		return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
	}
}
