package org.setwright.command.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Text laid out to fit a terminal: lines that wrap at their indent and rows whose cells wrap in their column. */
public final class Page {
	private static final int GAP = 2;
	private final StringBuilder text = new StringBuilder();
	private final int width;
	private final boolean colour;
	private final boolean accents;
	private boolean separate;

	/** @param at where the page will be shown */
	public Page(Surroundings at) {
		width = at.columns();
		colour = at.colour();
		accents = at.accents();
	}

	/** @return how many characters fit on a line */
	public int width() {
		return width;
	}

	/** Leaves a line free before whatever comes next; never two, and none at the top or the end. */
	public Page blank() {
		separate = text.length() > 0;
		return this;
	}

	/** Adds one line, wrapped where it is too long. @param indent in characters */
	public Page line(int indent, Style style, String words) {
		return row(indent, Cell.rest(style, words));
	}

	/** Adds one line that is never wrapped: something to be typed as it stands. @param indent in characters */
	public Page verbatim(int indent, Style style, String words) {
		String typed = Letters.asTyped(words);
		return append(" ".repeat(indent) + painted(style, accents ? typed : Letters.ascii(typed)));
	}

	/** Adds one row; it is as high as its highest cell. @param indent in characters */
	public Page row(int indent, Cell... cells) {
		int[] widths = widths(indent, cells);
		List<List<String>> columns = new ArrayList<>();
		for (int i = 0; i < cells.length; i++) {
			columns.add(wrapped(shown(cells[i].text()), widths[i]));
		}
		int height = columns.stream().mapToInt(List::size).max().orElse(0);
		for (int line = 0; line < height; line++) {
			appendLine(indent, line, cells, widths, columns);
		}
		return this;
	}

	/** @return everything added so far */
	@Override
	public String toString() {
		return text.toString();
	}

	private void appendLine(int indent, int line, Cell[] cells, int[] widths, List<List<String>> columns) {
		StringBuilder built = new StringBuilder(" ".repeat(indent));
		int pad = 0;
		for (int i = 0; i < cells.length; i++) {
			String words = line < columns.get(i).size() ? columns.get(i).get(line) : "";
			if (!words.isEmpty()) {
				built.append(" ".repeat(pad)).append(painted(cells[i].style(), words));
				pad = 0;
			}
			pad += widths[i] - length(words) + GAP;
		}
		append(built.toString());
	}

	private Page append(String line) {
		text.append(separate ? "\n" : "").append(line.stripTrailing()).append('\n');
		separate = false;
		return this;
	}

	private int[] widths(int indent, Cell[] cells) {
		int taken = indent + Arrays.stream(cells).mapToInt(c -> c.width() == 0 ? 0 : c.width() + GAP).sum();
		return Arrays.stream(cells).mapToInt(c -> c.width() == 0 ? Math.max(width - taken, 10) : c.width()).toArray();
	}

	private String painted(Style style, String words) {
		return colour ? style.paint(words) : words;
	}

	private String shown(String words) {
		return accents ? Letters.harmless(words) : Letters.ascii(Letters.harmless(words));
	}

	private static List<String> wrapped(String words, int width) {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : words.strip().split(" ")) {
			if (line.length() > 0 && length(line) + 1 + length(word) > width) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.length() > 0 ? " " : "").append(word);
			while (length(line) > width) {
				int end = line.offsetByCodePoints(0, width);
				lines.add(line.substring(0, end));
				line.delete(0, end);
			}
		}
		lines.add(line.toString());
		return lines;
	}

	private static int length(CharSequence words) {
		return (int) words.codePoints().count();
	}
}
