package org.setwright.book.text;

import java.util.Arrays;

/**
 * The text of one file, knowing its lines. A line ends with LF, CR LF or CR. Offsets and columns count Java characters,
 * as editors do. A byte order mark at the front is not part of the text.
 */
public final class SourceText {
	private static final char BYTE_ORDER_MARK = '\uFEFF';
	private final String text;
	private final int[] lineStarts;

	private SourceText(String text, int[] lineStarts) {
		this.text = text;
		this.lineStarts = lineStarts;
	}

	/** @return the source for {@code text}, without the byte order mark it may begin with */
	public static SourceText of(String text) {
		String plain = hasMark(text) ? text.substring(1) : text;
		int[] starts = new int[16];
		int lines = 1;
		for (int i = 0; i < plain.length(); i++) {
			char c = plain.charAt(i);
			boolean ends = c == '\n' || c == '\r' && !(i + 1 < plain.length() && plain.charAt(i + 1) == '\n');
			if (ends) {
				starts = lines == starts.length ? Arrays.copyOf(starts, lines * 2) : starts;
				starts[lines++] = i + 1;
			}
		}
		return new SourceText(plain, Arrays.copyOf(starts, lines));
	}

	/** @return whether {@code text} begins with a byte order mark */
	public static boolean hasMark(String text) {
		return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
	}

	/** @return the text */
	public String text() {
		return text;
	}

	/** @return the line of {@code offset}, from 1 */
	public int line(int offset) {
		int found = Arrays.binarySearch(lineStarts, offset);
		return found >= 0 ? found + 1 : -found - 1;
	}

	/** @return the column of {@code offset}, from 1 */
	public int column(int offset) {
		return offset - lineStart(offset) + 1;
	}

	/** @return where the line of {@code offset} begins */
	public int lineStart(int offset) {
		return lineStarts[line(offset) - 1];
	}

	/** @return where the line of {@code offset} ends, its line break not included */
	public int lineEnd(int offset) {
		int end = nextLine(offset);
		while (end > offset && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
			end--;
		}
		return end;
	}

	/** @return where the line after that of {@code offset} begins; the end of the text when there is none */
	public int nextLine(int offset) {
		int line = line(offset);
		return line < lineStarts.length ? lineStarts[line] : text.length();
	}

	/** @return the line break this text uses: that of its first line, or LF */
	public String lineBreak() {
		int first = text.indexOf('\n');
		return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
	}
}
