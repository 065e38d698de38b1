package org.setwright.command.terminal;

/** Text in a column of a row. @param width in characters; 0 for whatever is left of the line */
public record Cell(int width, Style style, String text) {

	/** @return a cell that takes what is left of the line */
	public static Cell rest(Style style, String text) {
		return new Cell(0, style, text);
	}
}
