package org.setwright.book;

/**
 * A place in a file of a rule book.
 *
 * @param file the path below the book folder, with forward slashes; "" for the folder itself
 * @param line from 1; 0 when the whole file is meant
 * @param column from 1, counting Java characters as editors do; 0 when the whole line is meant
 */
public record Position(String file, int line, int column) implements Comparable<Position> {

	/** @return the place that means the whole of {@code file} */
	public static Position whole(String file) {
		return new Position(file, 0, 0);
	}

	@Override
	public int compareTo(Position other) {
		int byFile = file.compareTo(other.file);
		int byLine = Integer.compare(line, other.line);
		return byFile != 0 ? byFile : byLine != 0 ? byLine : Integer.compare(column, other.column);
	}

	/** @return for example {@code rules/valve.drl:12:5} */
	@Override
	public String toString() {
		return file + (line > 0 ? ":" + line : "") + (column > 0 ? ":" + column : "");
	}
}
