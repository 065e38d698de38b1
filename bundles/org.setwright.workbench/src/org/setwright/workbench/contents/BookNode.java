package org.setwright.workbench.contents;

import java.util.List;
import java.util.Locale;
import org.setwright.book.Position;
import org.setwright.workbench.rows.SearchWords;

/**
 * One line of the contents of a book.
 *
 * @param sign which sign stands before it
 * @param text the line
 * @param remark what stands after it, quieter; may be empty
 * @param at where it begins; the whole file for a file
 * @param children what is in it
 */
public record BookNode(Sign sign, String text, String remark, Position at, List<BookNode> children) {
	public BookNode {
		children = List.copyOf(children);
	}

	/** The sign before a line. */
	public enum Sign {
		BOOK, FOLDER, SETUP, RULE, TABLE, JOB, PROBLEM
	}

	/** @return whether every word of {@code search} occurs in it or in something in it */
	public boolean matches(String search) {
		return search.isBlank() || matchesItself(search) || children.stream().anyMatch(c -> c.matches(search));
	}

	private boolean matchesItself(String search) {
		return SearchWords.allIn(search, (text + ' ' + remark).toLowerCase(Locale.ROOT));
	}
}
