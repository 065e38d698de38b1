package org.setwright.engine.language;

/**
 * One word or sign of a rule file.
 *
 * @param text as written; for text in quotes, what stands between them with escapes resolved
 * @param start offset of its first character
 * @param end offset after its last character
 * @param line from 1
 * @param column from 1
 */
record Token(Kind kind, String text, int start, int end, int line, int column) {

	/** What a token is. */
	enum Kind {
		WORD, VARIABLE, NUMBER, QUOTED, SIGN, END
	}

	boolean is(String wanted) {
		return (kind == Kind.WORD || kind == Kind.SIGN) && text.equals(wanted);
	}

	/** @return the token as an error message names it */
	String shown() {
		return kind == Kind.END ? "the end of the file" : kind == Kind.QUOTED ? "\"" + text + "\"" : text;
	}
}
