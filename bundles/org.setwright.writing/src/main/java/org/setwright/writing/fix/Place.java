package org.setwright.writing.fix;

import java.util.Locale;
import org.setwright.writing.text.Lines;

/** Finds what is to be replaced, and fits what replaces it into the kind of file it stands in. */
final class Place {
	private Place() {
	}

	/** @return where {@code written} stands at {@code from} or behind it on the same line, as whole words; -1 when it does not */
	static int of(String written, String text, int from) {
		int lineEnd = Lines.end(text, from);
		int found = text.indexOf(written, from);
		while (found >= 0 && found <= lineEnd) {
			if (apart(text, found - 1, found) && apart(text, found + written.length() - 1, found + written.length())) {
				return found;
			}
			found = text.indexOf(written, found + 1);
		}
		return -1;
	}

	/** @return whether no word goes on from {@code left} to {@code right} */
	private static boolean apart(String text, int left, int right) {
		return left < 0 || right >= text.length() || !(isWord(text.charAt(left)) && isWord(text.charAt(right)));
	}

	private static boolean isWord(char c) {
		return Character.isLetterOrDigit(c) || c == '_' || c == '$';
	}

	/** @return {@code word} as it may stand at {@code at}: a cell of a table that holds a comma stands in quotes */
	static String fitting(String word, String path, String text, int at) {
		boolean quoted = at > 0 && text.charAt(at - 1) == '"';
		return path.endsWith(".csv") && word.contains(",") && !quoted ? "\"" + word + "\"" : word;
	}

	/** @return an identifier as words: FAN_AFTER_HEAT becomes "fan after heat" */
	static String words(String identifier) {
		return identifier.matches("[A-Z][A-Z0-9_]*") ? identifier.toLowerCase(Locale.ROOT).replace('_', ' ') : identifier;
	}
}
