package org.setwright.book.yaml;

import java.util.regex.Pattern;

/** Writes text so that it reads back as exactly that text: as it is when that is safe, else in quotes. */
public final class YamlWords {
	private static final Pattern PLAIN_ANYWHERE = Pattern.compile("(?:[\\p{L}\\p{N}]|-\\d)[\\p{L}\\p{N} '\"./()°%+*&;=<>@_²³-]*");
	private static final Pattern PLAIN_ON_A_LINE = Pattern.compile("(?:[\\p{L}\\p{N}]|-\\d)[\\p{L}\\p{N} '\"./()°%+*&;=<>@_²³,\\[\\]{}-]*");

	private YamlWords() {
	}

	/** @param inBraces whether it will stand between braces or brackets, where commas separate */
	public static String of(String text, boolean inBraces) {
		Pattern plain = inBraces ? PLAIN_ANYWHERE : PLAIN_ON_A_LINE;
		if (plain.matcher(text).matches() && !text.endsWith(" ") && !text.equalsIgnoreCase("null")) {
			return text;
		}
		boolean visible = text.codePoints().allMatch(c -> c == ' ' || !special(c));
		return visible ? "'" + text.replace("'", "''") + "'" : doubleQuoted(text);
	}

	/**
	 * @param text several lines, none of them beginning or ending in a blank
	 * @param indent put before every line
	 * @return the text on lines of its own, after the sign that says so
	 */
	public static String onLines(String text, String indent) {
		return "|\n" + text.lines().map(line -> line.isEmpty() ? line : indent + line).reduce((a, b) -> a + "\n" + b).orElse("");
	}

	/**
	 * @param text one line, with single blanks between its words and nothing to hide
	 * @param width after which a line is broken at a blank
	 * @return the text on several lines that read back as one
	 */
	public static String folded(String text, String indent, int width) {
		StringBuilder written = new StringBuilder(">-");
		int column = width;
		for (String word : text.split(" ")) {
			boolean breaks = column + 1 + word.length() > width;
			written.append(breaks ? "\n" + indent : " ").append(word);
			column = (breaks ? indent.length() : column + 1) + word.length();
		}
		return written.toString();
	}

	/** @return whether {@link #folded} text reads back the same */
	public static boolean folds(String text) {
		return text.strip().equals(text) && !text.contains("  ") && text.codePoints().noneMatch(YamlWords::special);
	}

	/** @return {@code text} on one line between double quotes */
	public static String doubleQuoted(String text) {
		StringBuilder written = new StringBuilder("\"");
		text.codePoints().forEach(c -> written.append(escaped(c)));
		return written.append('"').toString();
	}

	private static String escaped(int c) {
		return switch (c) {
			case '"' -> "\\\"";
			case '\\' -> "\\\\";
			case '\n' -> "\\n";
			case '\r' -> "\\r";
			case '\t' -> "\\t";
			default -> special(c) ? String.format(c > 0xFFFF ? "\\U%08X" : "\\u%04X", c) : Character.toString(c);
		};
	}

	private static boolean special(int c) {
		int type = Character.getType(c);
		return type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE || type == Character.UNASSIGNED
				|| type == Character.PRIVATE_USE || type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
	}
}
