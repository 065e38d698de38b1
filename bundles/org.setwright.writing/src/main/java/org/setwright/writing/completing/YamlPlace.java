package org.setwright.writing.completing;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where a cursor stands in a half-written text of names, values and lists. Only what stands before the cursor is looked at, so
 * what is still missing behind it does not matter.
 *
 * @param names of the groups it stands in, the outermost first; when a value is being written, the name it belongs to is the last
 * @param value whether a value is being written, and not a name or an item of a list
 * @param typed what has been typed of it, perhaps nothing
 * @param start where that begins
 */
record YamlPlace(List<String> names, boolean value, String typed, int start) {

	/** @return empty within comments and quotation marks */
	static Optional<YamlPlace> at(String text, int offset) {
		return new Scanner(text.substring(0, Math.min(offset, text.length()))).place();
	}

	/** A group that has been opened. */
	private static final class Group {
		private final int indent;
		private final boolean braces;
		private String name = "";

		Group(int indent, boolean braces) {
			this.indent = indent;
			this.braces = braces;
		}
	}

	/** Goes through the text once. */
	private static final class Scanner {
		private final String text;
		private final Deque<Group> open = new ArrayDeque<>();
		private int at;
		private int start;
		private boolean value;
		private boolean unreadable;

		Scanner(String text) {
			this.text = text;
			open.push(new Group(0, false));
		}

		Optional<YamlPlace> place() {
			line();
			while (at < text.length() && !unreadable) {
				step();
			}
			if (unreadable) {
				return Optional.empty();
			}
			while (start < text.length() && text.charAt(start) == ' ') {
				start++;
			}
			return Optional.of(new YamlPlace(names(), value, text.substring(start), start));
		}

		private List<String> names() {
			Iterator<Group> outermostFirst = open.descendingIterator();
			return Stream.generate(() -> outermostFirst.hasNext() ? outermostFirst.next() : null).limit(open.size())
					.map(g -> g.name).filter(n -> !n.isEmpty()).toList();
		}

		private void step() {
			char c = text.charAt(at);
			boolean begins = text.substring(start, at).isBlank();
			if (c == '\n') {
				at++;
				if (!open.peek().braces) {
					line();
				}
			} else if (c == '#' && (at == 0 || Character.isWhitespace(text.charAt(at - 1)))) {
				int end = text.indexOf('\n', at);
				unreadable = end < 0;
				at = end < 0 ? text.length() : end;
			} else if ((c == '"' || c == '\'') && begins) {
				int end = text.indexOf(c, at + 1);
				unreadable = end < 0;
				at = end < 0 ? text.length() : end + 1;
			} else if ((c == '{' || c == '[') && begins) {
				open.push(new Group(0, true));
				next(false);
			} else if ((c == '}' || c == ']') && open.peek().braces) {
				open.pop();
				next(true);
			} else if (c == ',' && open.peek().braces) {
				open.peek().name = "";
				next(false);
			} else if (c == ':' && !value && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)))) {
				open.peek().name = text.substring(start, at).replaceAll("^[\\s\"']+|[\\s\"']+$", "");
				next(true);
			} else {
				at++;
			}
		}

		private void next(boolean isValue) {
			at++;
			start = at;
			value = isValue;
		}

		/** A line begins: its indent tells which groups go on. */
		private void line() {
			int from = at;
			while (at < text.length() && (text.charAt(at) == ' ' || text.startsWith("- ", at))) {
				at++;
			}
			int indent = at - from;
			boolean empty = at < text.length() && text.charAt(at) == '\n';
			start = at;
			value = false;
			if (!empty) {
				while (open.size() > 1 && open.peek().indent > indent) {
					open.pop();
				}
				if (open.peek().indent < indent) {
					open.push(new Group(indent, false));
				}
				open.peek().name = "";
			}
		}
	}
}
