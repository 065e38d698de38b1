package org.setwright.writing.text;

/**
 * One word, sign, text in quotes or comment of a rule file.
 *
 * @param text exactly as written
 * @param start offset of its first character
 */
public record Piece(Kind kind, String text, int start) {

	/** What a piece is. */
	public enum Kind {
		COMMENT, QUOTED, WORD, VARIABLE, NUMBER, SIGN
	}

	/** @return offset behind its last character */
	public int end() {
		return start + text.length();
	}

	/** @return whether it is the word or sign {@code wanted} */
	public boolean is(String wanted) {
		return (kind == Kind.WORD || kind == Kind.SIGN) && text.equals(wanted);
	}

	/** @return what stands between the quotation marks, escapes resolved; the text itself for other pieces */
	public String inside() {
		if (kind != Kind.QUOTED) {
			return text;
		}
		boolean closed = text.length() > 1 && text.charAt(text.length() - 1) == text.charAt(0);
		return text.substring(1, closed ? text.length() - 1 : text.length()).replaceAll("\\\\(.)", "$1");
	}
}
