package org.setwright.book;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes maps, lists, words, numbers and truth values as JSON, two blanks a level. */
final class JsonText {
	private static final String INDENT = "  ";

	private JsonText() {
	}

	/** @param value a map with words as keys, a list, a String, Number or Boolean */
	static String of(Object value) {
		return of(value, "\n");
	}

	private static String of(Object value, String line) {
		if (value instanceof Map<?, ?> map) {
			return map.isEmpty() ? "{}" : map.entrySet().stream()
					.map(e -> quoted(e.getKey().toString()) + ": " + of(e.getValue(), line + INDENT))
					.collect(Collectors.joining("," + line + INDENT, "{" + line + INDENT, line + "}"));
		} else if (value instanceof List<?> list) {
			return list.isEmpty() ? "[]" : list.stream().map(item -> of(item, line + INDENT))
					.collect(Collectors.joining("," + line + INDENT, "[" + line + INDENT, line + "]"));
		} else if (value instanceof Double number && number == Math.rint(number)) {
			return Long.toString(number.longValue());
		}
		return value instanceof String text ? quoted(text) : value.toString();
	}

	private static String quoted(String text) {
		StringBuilder written = new StringBuilder("\"");
		for (char c : text.toCharArray()) {
			written.append(c == '"' || c == '\\' ? "\\" + c : c < ' ' ? String.format("\\u%04x", (int) c) : String.valueOf(c));
		}
		return written.append('"').toString();
	}
}
