package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;

/** The entries of a group, each name once. */
final class Keys {
	private static final Pattern BLANKS = Pattern.compile("\\s+");
	private final Map<String, Entry> byName = new LinkedHashMap<>();

	private Keys() {
	}

	/** Reports names written twice; the first counts. */
	static Keys of(Mapping mapping, ProblemList problems) {
		Keys keys = new Keys();
		for (Entry entry : mapping.entries()) {
			Entry first = keys.byName.putIfAbsent(normal(entry.key().text()), entry);
			if (first != null) {
				problems.error(entry.key().start(), Misfit.quoted(entry.key().text()) + " is written twice; first on line "
						+ problems.at(first.key().start()).line() + ".", "Keep the right one and remove the other.");
			}
		}
		return keys;
	}

	/** @return {@code text} in small letters, with single blanks */
	static String normal(String text) {
		return BLANKS.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
	}

	/** @return in file order */
	List<Entry> entries() {
		return new ArrayList<>(byName.values());
	}

	/** @param name in small letters */
	Optional<YamlNode> value(String name) {
		return Optional.ofNullable(byName.get(name)).map(Entry::value);
	}
}
