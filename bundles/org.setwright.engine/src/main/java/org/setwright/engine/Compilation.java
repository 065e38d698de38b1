package org.setwright.engine;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Problem;

/**
 * What compiling a book gives.
 *
 * @param edition empty when any problem is an error: then nothing runs
 * @param problems the book's own and those of its rules and tables, by position
 */
public record Compilation(Optional<Edition> edition, List<Problem> problems) {
	public Compilation {
		problems = List.copyOf(problems);
	}
}
