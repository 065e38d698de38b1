package org.setwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.bench.told.Row;
import org.setwright.bench.told.Tone;

/** Everything said so far, as lines of text. */
final class SaidText {
	private final List<Line> lines = new ArrayList<>();
	private final StringBuilder text = new StringBuilder();

	/**
	 * One line of the text.
	 *
	 * @param start offset of its first character
	 * @param depth how far it is indented; a line that was typed is not
	 * @param tone how it stands out; empty for a line that was typed
	 * @param at where in the book it stands; empty when nowhere
	 * @param link offset of where that is written; only where {@code at} is not empty
	 */
	record Line(int start, int length, int depth, Optional<Tone> tone, String at, int link) {
		int end() {
			return start + length;
		}
	}

	/** Adds {@code told}. @return the lines it became */
	List<Line> add(Told told) {
		int before = lines.size();
		if (!told.line().isEmpty()) {
			told.line().lines().forEach(l -> line(l, 0, Optional.empty(), "")); //$NON-NLS-1$
		}
		int below = told.line().isEmpty() ? 0 : 1;
		for (Row row : told.rows()) {
			line(row.words(), row.depth() + below, Optional.of(row.tone()), row.at());
		}
		return List.copyOf(lines.subList(before, lines.size()));
	}

	private void line(String words, int depth, Optional<Tone> tone, String at) {
		int start = text.length();
		text.append(words);
		int link = text.length();
		if (!at.isEmpty()) {
			text.append("   "); //$NON-NLS-1$
			link = text.length();
			text.append(at);
		}
		lines.add(new Line(start, text.length() - start, depth, tone, at, link));
		text.append('\n');
	}

	/** @return the whole text */
	String text() {
		return text.toString();
	}

	/** @return every line */
	List<Line> lines() {
		return List.copyOf(lines);
	}

	/** @return the line that holds {@code offset} */
	Optional<Line> at(int offset) {
		return lines.stream().filter(l -> l.start() <= offset && offset <= l.end()).findFirst();
	}

	/** Forgets everything. */
	void clear() {
		lines.clear();
		text.setLength(0);
	}
}
