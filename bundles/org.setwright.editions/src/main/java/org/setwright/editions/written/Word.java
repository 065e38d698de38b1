package org.setwright.editions.written;

import java.util.ArrayList;
import java.util.List;

/** A word, sign, quoted text or comment of a rule file. @param text as written @param start in characters from 0 */
record Word(Kind kind, String text, int start) {
	enum Kind {
		WORD, QUOTED, SIGN, COMMENT
	}

	int end() {
		return start + text.length();
	}

	boolean is(String word) {
		return kind == Kind.WORD && text.equals(word);
	}

	/** @return the text of a quoted one without its quotation marks; of others as it is */
	String inside() {
		return kind != Kind.QUOTED ? text : text.substring(1, Math.max(1, text.length() - (text.length() > 1
				&& text.charAt(text.length() - 1) == text.charAt(0) ? 1 : 0)));
	}

	/** @return every word of {@code text}; never fails, whatever it holds */
	static List<Word> all(String text) {
		List<Word> words = new ArrayList<>();
		int at = 0;
		while (at < text.length()) {
			char c = text.charAt(at);
			int end = at + 1;
			Kind kind = Kind.SIGN;
			if (Character.isWhitespace(c)) {
				at = end;
				continue;
			} else if (text.startsWith("//", at)) {
				kind = Kind.COMMENT;
				end = lineEnd(text, at);
			} else if (text.startsWith("/*", at)) {
				kind = Kind.COMMENT;
				int close = text.indexOf("*/", at + 2);
				end = close < 0 ? text.length() : close + 2;
			} else if (c == '"' || c == '\'') {
				kind = Kind.QUOTED;
				end = quotedEnd(text, at, c);
			} else if (Character.isLetterOrDigit(c) || c == '_' || c == '$') {
				kind = Kind.WORD;
				while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_' || text.charAt(end) == '.'
						&& Character.isDigit(c))) {
					end++;
				}
			} else if (List.of("==", "!=", "<=", ">=", "&&", "||").contains(text.substring(at, Math.min(at + 2, text.length())))) {
				end = at + 2;
			}
			words.add(new Word(kind, text.substring(at, end), at));
			at = end;
		}
		return words;
	}

	private static int lineEnd(String text, int from) {
		int end = from;
		while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
			end++;
		}
		return end;
	}

	private static int quotedEnd(String text, int from, char quote) {
		int end = from + 1;
		while (end < text.length() && text.charAt(end) != quote && text.charAt(end) != '\n') {
			end += text.charAt(end) == '\\' && end + 1 < text.length() && text.charAt(end + 1) != '\n' ? 2 : 1;
		}
		return Math.min(text.length(), end < text.length() && text.charAt(end) == quote ? end + 1 : end);
	}
}
