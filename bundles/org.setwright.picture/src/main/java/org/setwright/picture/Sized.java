package org.setwright.picture;

import java.util.ArrayList;
import java.util.List;

/** Breaks the text of a node into lines and finds how large its box has to be. */
final class Sized {
	/** In type of the usual size. */
	private static final double WIDEST = 190;

	private Sized() {
	}

	/** @return the box of {@code node}, at no place yet */
	static Picture.Box box(Node node, TextMeasure measure) {
		List<String> title = broken(node.title(), true, measure);
		List<String> words = new ArrayList<>(List.of(node.sort().word()));
		words.addAll(title);
		if (!node.text().isEmpty()) {
			words.addAll(broken(node.text(), false, measure));
		}
		double width = words.stream().mapToDouble(w -> measure.width(w, true)).max().orElse(0);
		return new Picture.Box(node, 0, 0, Math.ceil(width + 2 * Picture.PADDING + slant(node)),
				words.size() * measure.lineHeight() + 2 * Picture.PADDING, words, title.size());
	}

	/** Shapes with slanting sides need more room. */
	private static double slant(Node node) {
		return switch (node.sort()) {
			case CALCULATED, PROPOSAL, FINDING -> 2 * Picture.PADDING;
			case ANSWER, RULE, SETTING -> 0;
		};
	}

	private static List<String> broken(String text, boolean strong, TextMeasure measure) {
		List<String> lines = new ArrayList<>();
		StringBuilder line = new StringBuilder();
		for (String word : text.split(" ")) {
			if (line.length() > 0 && measure.width(line + " " + word, strong) > WIDEST * measure.lineHeight() / Picture.LINE_HEIGHT) {
				lines.add(line.toString());
				line.setLength(0);
			}
			line.append(line.length() > 0 ? " " : "").append(word);
		}
		lines.add(line.toString());
		return lines;
	}
}
