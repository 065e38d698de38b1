package org.setwright.bench.facts;

import java.util.ArrayList;
import java.util.List;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Span;

/** Names and values on one line, with or without brackets around them. */
final class Group {
	private Group() {
	}

	/** A name and its value. */
	record Pair(Span name, Span value) {
	}

	/** @return the parts of {@code text} between commas that stand in no brackets or quotes, brackets around all of it left out */
	static List<Span> parts(Span text, char open, char close) throws Misread {
		Span inner = text;
		if (text.text().startsWith(String.valueOf(open))) {
			if (!text.text().endsWith(String.valueOf(close))) {
				throw new Misread(text.end(), text.end(), "The bracket " + open + " is not closed.", "Write " + close + " at the end.");
			}
			inner = new Span(text.text().substring(1, text.text().length() - 1), text.start() + 1).strip();
		}
		return split(inner, ',');
	}

	/** @return the names and values in {@code text} */
	static List<Pair> pairs(Span text) throws Misread {
		List<Pair> pairs = new ArrayList<>();
		for (Span part : parts(text, '{', '}')) {
			List<Span> both = split(part, ':');
			if (both.size() < 2 || both.get(1).isEmpty()) {
				throw part.misread("A name and a value are expected here.", "Write them with a colon between, for example \"stages: 2\".");
			}
			pairs.add(new Pair(both.get(0), part.from(both.get(1).start() - part.start()).bare()));
		}
		return pairs;
	}

	private static List<Span> split(Span text, char at) {
		List<Span> parts = new ArrayList<>();
		int depth = 0;
		boolean quoted = false;
		int from = 0;
		for (int i = 0; i < text.text().length(); i++) {
			char c = text.text().charAt(i);
			quoted ^= c == '"';
			depth += quoted ? 0 : "{[(".indexOf(c) >= 0 ? 1 : "}])".indexOf(c) >= 0 ? -1 : 0;
			if (c == at && !quoted && depth == 0) {
				parts.add(part(text, from, i));
				from = i + 1;
			}
		}
		parts.add(part(text, from, text.text().length()));
		return parts.stream().filter(p -> !p.isEmpty()).toList();
	}

	private static Span part(Span text, int from, int to) {
		return new Span(text.text().substring(from, to), text.start() + from).strip();
	}
}
