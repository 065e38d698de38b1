package org.setwright.book.yaml;

import java.util.Arrays;

/** Turns the parser's places, which count Unicode code points, into offsets, which count Java characters. */
final class Offsets {
	private final String text;
	/** Code point index of each surrogate pair; empty for nearly every file. */
	private final int[] pairs;

	Offsets(String text) {
		this.text = text;
		int[] found = new int[0];
		int count = 0;
		int index = 0;
		for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i)), index++) {
			if (Character.isSupplementaryCodePoint(text.codePointAt(i))) {
				found = count == found.length ? Arrays.copyOf(found, 16 + count * 2) : found;
				found[count++] = index;
			}
		}
		pairs = Arrays.copyOf(found, count);
	}

	/** @return the offset of code point {@code index}, never past the end */
	int of(int index) {
		int found = Arrays.binarySearch(pairs, index);
		int pairsBefore = found >= 0 ? found : -found - 1;
		return Math.min(index + pairsBefore, text.length());
	}

	/** @return {@code end} moved back over blanks and line breaks, not before {@code start} */
	int withoutBlanksBefore(int end, int start) {
		int at = end;
		while (at > start && Character.isWhitespace(text.charAt(at - 1))) {
			at--;
		}
		return at;
	}

	/** @return the offset of the last visible character, or 0 */
	int lastVisible() {
		return Math.max(0, withoutBlanksBefore(text.length(), 0) - 1);
	}

	/** @return the character at {@code offset}, or a blank outside the text */
	char at(int offset) {
		return offset >= 0 && offset < text.length() ? text.charAt(offset) : ' ';
	}

	/** @return what stands before {@code offset} on its line */
	String lineBefore(int offset) {
		int start = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
		return text.substring(Math.min(start, offset), offset);
	}
}
