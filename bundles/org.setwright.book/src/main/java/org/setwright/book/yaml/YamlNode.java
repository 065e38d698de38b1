package org.setwright.book.yaml;

import java.util.List;

/** A part of a YAML text, with the place it stands at. Immutable. */
public sealed interface YamlNode {

	/** @return where its text begins, as an offset */
	int start();

	/** @return where its text ends (comments and line breaks after it not included), as an offset */
	int end();

	/**
	 * One value.
	 *
	 * @param text what it says, quotes and folding undone
	 * @param style how it is written
	 */
	record Scalar(String text, Style style, int start, int end) implements YamlNode {
		/** @return whether it is blank, or one of the signs by which YAML says nothing */
		public boolean saysNothing() {
			boolean sign = style == Style.PLAIN && (text.equals("~") || text.equalsIgnoreCase("null"));
			return sign || text.isBlank();
		}

		/** @return whether nothing is written */
		public boolean isEmpty() {
			return style == Style.PLAIN && text.isEmpty();
		}
	}

	/** How a value is written. */
	enum Style {
		/** As it is. */
		PLAIN,
		/** Between quotes. */
		QUOTED,
		/** On lines of its own after {@code |} or {@code >}. */
		BLOCK
	}

	/** Names with values. @param flow whether it is written between braces */
	record Mapping(List<Entry> entries, boolean flow, int start, int end) implements YamlNode {
		public Mapping {
			entries = List.copyOf(entries);
		}
	}

	/** One name with its value. */
	record Entry(Scalar key, YamlNode value) {
	}

	/** A list. @param flow whether it is written between brackets */
	record Sequence(List<YamlNode> items, boolean flow, int start, int end) implements YamlNode {
		public Sequence {
			items = List.copyOf(items);
		}
	}
}
