package org.setwright.workbench.folder;

import java.util.Optional;

/**
 * A stretch of a text.
 *
 * @param start offset of its first character, from 0
 * @param end offset behind its last character
 */
public record TextSpan(int start, int end) {

	/**
	 * @param line from 1
	 * @param column from 1, or 0 for the whole line
	 * @return the word that begins there, or the rest of the line when no word does; empty when there is no such place
	 */
	public static Optional<TextSpan> of(String text, int line, int column) {
		int lineStart = lineStart(text, line);
		if (lineStart < 0) {
			return Optional.empty();
		}
		int lineEnd = lineEnd(text, lineStart);
		if (column <= 0) {
			return Optional.of(new TextSpan(firstNonBlank(text, lineStart, lineEnd), lineEnd));
		}
		int start = Math.min(lineStart + column - 1, lineEnd);
		int end = start;
		while (end < lineEnd && isWord(text.charAt(end))) {
			end++;
		}
		return Optional.of(new TextSpan(start, end > start ? end : lineEnd));
	}

	private static int lineStart(String text, int line) {
		int start = line < 1 ? -1 : 0;
		for (int i = 1; i < line && start >= 0; i++) {
			int next = text.indexOf('\n', start);
			start = next < 0 ? -1 : next + 1;
		}
		return start;
	}

	private static int lineEnd(String text, int lineStart) {
		int end = text.indexOf('\n', lineStart);
		end = end < 0 ? text.length() : end;
		return end > lineStart && text.charAt(end - 1) == '\r' ? end - 1 : end;
	}

	private static int firstNonBlank(String text, int from, int end) {
		int start = from;
		while (start < end && Character.isWhitespace(text.charAt(start))) {
			start++;
		}
		return start;
	}

	private static boolean isWord(char c) {
		return Character.isLetterOrDigit(c) || c == '_' || c == '$';
	}
}
