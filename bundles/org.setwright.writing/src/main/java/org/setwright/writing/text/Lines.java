package org.setwright.writing.text;

/** Finds the lines of a text. A line ends with LF, or CR LF; offsets count Java characters from 0, lines from 1. */
public final class Lines {
	private Lines() {
	}

	/** @return where line {@code line} begins; -1 when there is none */
	public static int start(String text, int line) {
		int start = line < 1 ? -1 : 0;
		for (int i = 1; i < line && start >= 0; i++) {
			int next = text.indexOf('\n', start);
			start = next < 0 ? -1 : next + 1;
		}
		return start;
	}

	/** @return where the line of {@code offset} begins */
	public static int startAt(String text, int offset) {
		return text.lastIndexOf('\n', offset - 1) + 1;
	}

	/** @return where the line of {@code offset} ends, its line break not included */
	public static int end(String text, int offset) {
		int end = text.indexOf('\n', offset);
		end = end < 0 ? text.length() : end;
		return end > offset && text.charAt(end - 1) == '\r' ? end - 1 : end;
	}

	/** @return where the line after that of {@code offset} begins; the end of the text when there is none */
	public static int next(String text, int offset) {
		int end = text.indexOf('\n', offset);
		return end < 0 ? text.length() : end + 1;
	}

	/** @return the line of {@code offset}, from 1 */
	public static int number(String text, int offset) {
		int line = 1;
		for (int i = 0; i < offset; i++) {
			line += text.charAt(i) == '\n' ? 1 : 0;
		}
		return line;
	}

	/** @return the blanks with which the line of {@code offset} begins */
	public static String indent(String text, int offset) {
		int start = startAt(text, offset);
		int end = start;
		while (end < text.length() && (text.charAt(end) == ' ' || text.charAt(end) == '\t')) {
			end++;
		}
		return text.substring(start, end);
	}

	/** @return the line break this text uses: that of its first line, or LF */
	public static String lineBreak(String text) {
		int first = text.indexOf('\n');
		return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
	}
}
