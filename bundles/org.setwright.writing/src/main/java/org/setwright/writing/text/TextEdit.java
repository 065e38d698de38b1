package org.setwright.writing.text;

import java.util.Comparator;
import java.util.List;

/**
 * A stretch of a text replaced by other text.
 *
 * @param start offset of its first character, from 0
 * @param end offset behind its last character; the same as {@code start} when text is only added
 * @param text what comes in its place; empty when text is only taken away
 */
public record TextEdit(int start, int end, String text) {
	public TextEdit {
		if (start < 0 || end < start) {
			throw new IllegalArgumentException("no stretch of a text: " + start + " to " + end);
		}
	}

	/** @return {@code text} written at {@code offset}, nothing taken away */
	public static TextEdit insert(int offset, String text) {
		return new TextEdit(offset, offset, text);
	}

	/** @return the smallest single edit that turns {@code before} into {@code after} */
	public static TextEdit between(String before, String after) {
		int shorter = Math.min(before.length(), after.length());
		int start = 0;
		while (start < shorter && before.charAt(start) == after.charAt(start)) {
			start++;
		}
		int end = 0;
		while (end < shorter - start && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
			end++;
		}
		return new TextEdit(start, before.length() - end, after.substring(start, after.length() - end));
	}

	/**
	 * Makes edits that do not overlap; their offsets are those of the text before any of them.
	 *
	 * @throws IllegalArgumentException when two overlap or one lies outside of {@code text}
	 */
	public static String apply(String text, List<TextEdit> edits) {
		StringBuilder result = new StringBuilder();
		int from = 0;
		for (TextEdit edit : edits.stream().sorted(Comparator.comparingInt(TextEdit::start)).toList()) {
			if (edit.start < from || edit.end > text.length()) {
				throw new IllegalArgumentException("edits overlap or lie outside of the text: " + edit);
			}
			result.append(text, from, edit.start).append(edit.text);
			from = edit.end;
		}
		return result.append(text, from, text.length()).toString();
	}
}
