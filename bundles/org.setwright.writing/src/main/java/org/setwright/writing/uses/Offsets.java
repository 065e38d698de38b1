package org.setwright.writing.uses;

import org.setwright.book.Position;
import org.setwright.writing.text.Lines;

/** Turns places into offsets. */
final class Offsets {
	private Offsets() {
	}

	/** @return where {@code at} is in {@code text}; 0 when there is no such place */
	static int of(String text, Position at) {
		int line = Math.max(Lines.start(text, at.line()), 0);
		return Math.min(line + Math.max(at.column() - 1, 0), text.length());
	}

	/** @return where {@code written} begins at {@code at} or behind it on the line; {@code at} itself when it is not found as it is */
	static int of(String text, Position at, String written) {
		int from = of(text, at);
		int found = text.indexOf(written, from);
		return found >= 0 && found <= Lines.end(text, from) ? found : from;
	}
}
