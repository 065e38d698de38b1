package org.setwright.command.editions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.command.terminal.Style;

/** One thing told: fields for programs, lines for people. */
final class Item {
	private final Map<String, String> fields = new LinkedHashMap<>();
	private final List<Line> lines = new ArrayList<>();

	/** A line for people. @param verbatim whether it is shown as it is, not wrapped */
	record Line(int indent, Style style, String words, boolean verbatim) {
	}

	/** Adds fields, their names and values in turn. */
	Item with(String... namesAndValues) {
		for (int i = 0; i < namesAndValues.length; i += 2) {
			fields.put(namesAndValues[i], namesAndValues[i + 1]);
		}
		return this;
	}

	Item line(int indent, Style style, String words) {
		lines.add(new Line(indent, style, words, false));
		return this;
	}

	Item verbatim(int indent, Style style, String words) {
		lines.add(new Line(indent, style, words, true));
		return this;
	}

	String field(String name) {
		return fields.getOrDefault(name, "");
	}

	List<Line> lines() {
		return lines;
	}
}
