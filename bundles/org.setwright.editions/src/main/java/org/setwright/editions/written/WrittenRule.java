package org.setwright.editions.written;

/**
 * A rule, or a row of a table, as it stands in a file.
 *
 * @param name as the engine calls it; for a row {@code table NAME, row N}
 * @param file the path below the book
 * @param line of its first word, from 1
 * @param lastLine of its last word, from 1
 * @param row its number from 1 in its table; 0 for a rule of a rule file
 * @param text as written, with comments directly above it, without a line break at its end
 * @param start where {@code text} begins in the file, in characters from 0
 */
public record WrittenRule(String name, String file, int line, int lastLine, int row, Parts parts, String text, int start) {

	/** @return whether it is a row of a table */
	public boolean isRow() {
		return row > 0;
	}

	/** @return where {@code text} ends in the file, exclusive */
	public int end() {
		return start + text.length();
	}

	/** @return how people name it: a rule in quotes, a row as it is */
	public String shown() {
		return isRow() ? name : '"' + name + '"';
	}
}
