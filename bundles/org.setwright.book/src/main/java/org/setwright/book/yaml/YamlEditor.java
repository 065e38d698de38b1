package org.setwright.book.yaml;

import java.util.List;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.Comments.Comment;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlNode.Style;

/**
 * Changes single entries of a YAML text and leaves everything else as it is. Comments inside what is removed move to
 * lines of their own above it. After every change the tree is read anew, so nodes taken from {@link #root()} hold for
 * one change only. Written values begin with a line break when they stand on lines of their own.
 */
public final class YamlEditor {
	private SourceText source;
	private Mapping root;

	/** @param text a sound YAML text that consists of names and values */
	public YamlEditor(String text) {
		read(text);
	}

	/** Thrown when a change would leave a text that cannot be read; the text is then not to be used. */
	public static final class Unreadable extends RuntimeException {
		private static final long serialVersionUID = 1;

		Unreadable(String why) {
			super(why);
		}
	}

	/** @return the text as it is now */
	public String text() {
		return source.text();
	}

	/** @return the names and values as they are now */
	public Mapping root() {
		return root;
	}

	/** @return every comment, in text order */
	public List<Comment> comments() {
		return Comments.of(source, root);
	}

	/** Puts {@code written} where the value of {@code entry} is. */
	public void replaceValue(Entry entry, String written) {
		int colon = text().indexOf(':', entry.key().end()) + 1;
		YamlNode old = entry.value();
		boolean onLines = written.startsWith("\n");
		boolean beside = old.end() > old.start() && source.line(old.start()) == source.line(colon) && !isBlock(old);
		if (beside && !onLines) {
			splice(old.start(), old.end(), written);
		} else {
			splice(colon, Math.max(colon, old.end()), (onLines ? "" : " ") + written);
		}
	}

	/** Puts {@code written} where the item is; the item must be a scalar. */
	public void replaceItem(Scalar item, String written) {
		splice(item.start(), item.end(), item.isEmpty() ? " " + written : written);
	}

	/** Adds an entry. @param after the entry of {@code mapping} it follows, by index; -1 to begin with it */
	public void insert(Mapping mapping, int after, String key, String written) {
		String line = key + ":" + (written.startsWith("\n") ? "" : " ") + written;
		if (mapping.entries().isEmpty()) {
			splice(mapping.start(), mapping.end(), "{ " + line + " }");
		} else if (mapping.flow()) {
			int at = after < 0 ? mapping.entries().get(0).key().start() : end(mapping.entries().get(after));
			splice(at, at, after < 0 ? line + ", " : ", " + line);
		} else {
			insertLine(mapping, after, line);
		}
	}

	private void insertLine(Mapping mapping, int after, String line) {
		int first = mapping.entries().get(0).key().start();
		String indent = " ".repeat(source.column(first) - 1);
		if (after < 0 && startsItsLine(first)) {
			splice(source.lineStart(first), source.lineStart(first), indent + line + "\n");
		} else {
			lineAfter(end(mapping.entries().get(Math.max(0, after))), indent + line);
		}
	}

	/** Removes an entry; {@code mapping} keeps at least one, or is written between braces. */
	public void remove(Mapping mapping, int index) {
		List<Entry> entries = mapping.entries();
		int start = entries.get(index).key().start();
		int end = end(entries.get(index));
		boolean last = index == entries.size() - 1;
		if (!mapping.flow() && startsItsLine(start)) {
			removeLines(start, end);
		} else if (!last) {
			splice(start, entries.get(index + 1).key().start(), "");
		} else {
			splice(index > 0 ? end(entries.get(index - 1)) : start, end, "");
		}
	}

	/** @return the blanks before the dashes of a list that is written on lines of its own; it must not be empty */
	public String indent(Sequence list) {
		return " ".repeat(source.column(dash(list.items().get(0))) - 1);
	}

	/** Adds an item at the end. */
	public void add(Sequence list, String written) {
		List<YamlNode> items = list.items();
		if (items.isEmpty()) {
			splice(list.start(), list.end(), "[" + written + "]");
		} else if (list.flow()) {
			int at = items.get(items.size() - 1).end();
			splice(at, at, ", " + written);
		} else {
			lineAfter(items.get(items.size() - 1).end(), indent(list) + "- " + written);
		}
	}

	/** Removes an item; {@code list} keeps at least one. */
	public void remove(Sequence list, int index) {
		List<YamlNode> items = list.items();
		YamlNode item = items.get(index);
		if (!list.flow()) {
			removeLines(dash(item), item.end());
		} else if (index < items.size() - 1) {
			splice(item.start(), items.get(index + 1).start(), "");
		} else {
			splice(index > 0 ? items.get(index - 1).end() : item.start(), item.end(), "");
		}
	}

	private void removeLines(int start, int end) {
		splice(source.lineStart(start), source.nextLine(Math.max(start, end)), "");
	}

	private void lineAfter(int end, String line) {
		int at = source.nextLine(end);
		boolean open = at == text().length() && source.lineEnd(end) == at;
		splice(at, at, open ? "\n" + line : line + "\n");
	}

	/** Replaces the text between two places, and moves comments between them to lines above. */
	private void splice(int from, int to, String written) {
		StringBuilder kept = new StringBuilder();
		int line = source.lineStart(from);
		String indent = text().substring(line, line + blanksAt(line));
		comments().stream().filter(c -> c.start() >= from && c.start() < to)
				.forEach(c -> kept.append(indent).append(c.text()).append('\n'));
		String changed = text().substring(0, line) + kept + text().substring(line, from) + written + text().substring(to);
		read(source.lineBreak().equals("\n") ? changed : changed.replaceAll("(?<!\r)\n", "\r\n"));
	}

	private void read(String text) {
		source = SourceText.of(text);
		YamlText read = YamlReader.read(source);
		if (read.faults().isEmpty() && read.root().isPresent() && read.root().get() instanceof Mapping mapping) {
			root = mapping;
		} else {
			throw new Unreadable(read.faults().isEmpty() ? "no names and values" : read.faults().get(0).what());
		}
	}

	private int dash(YamlNode item) {
		int at = item.start() - 1;
		while (at > 0 && Character.isWhitespace(text().charAt(at))) {
			at--;
		}
		if (at < 0 || text().charAt(at) != '-') {
			throw new Unreadable("no dash before a list item");
		}
		return at;
	}

	private boolean startsItsLine(int offset) {
		int line = source.lineStart(offset);
		return line + blanksAt(line) == offset;
	}

	private int blanksAt(int offset) {
		int count = 0;
		while (offset + count < text().length() && text().charAt(offset + count) == ' ') {
			count++;
		}
		return count;
	}

	private static boolean isBlock(YamlNode node) {
		return node instanceof Mapping mapping && !mapping.flow() || node instanceof Sequence list && !list.flow();
	}

	/** Where the text of an entry ends: at its value, or at its colon when it has none. */
	private int end(Entry entry) {
		YamlNode value = entry.value();
		boolean empty = value instanceof Scalar scalar && scalar.isEmpty() && scalar.style() == Style.PLAIN;
		return empty ? Math.max(value.end(), entry.key().end()) : value.end();
	}
}
