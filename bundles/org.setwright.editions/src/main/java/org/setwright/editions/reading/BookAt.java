package org.setwright.editions.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.editions.git.Content;
import org.setwright.editions.git.InHand;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.written.WrittenRule;

/**
 * What a book holds at an edition, or in hand. Immutable.
 *
 * @param edition empty for the work in hand
 * @param rules rules and table rows as written, by file and place
 */
public record BookAt(Optional<Kept> edition, Content content, List<WrittenRule> rules) {
	/** What there was before the first edition. */
	public static final BookAt NOTHING = new BookAt(Optional.empty(), InHand.of(Map.of()), List.of());

	public BookAt {
		rules = List.copyOf(rules);
	}

	/** @return the rule or row that {@code name} names exactly */
	public Optional<WrittenRule> rule(String name) {
		return rules.stream().filter(r -> r.name().equals(name)).findFirst();
	}

	/** @return the names of what the files in {@code folder} hold, by path */
	public Map<String, String> in(String folder) {
		Map<String, String> found = new TreeMap<>(content.names());
		found.keySet().removeIf(p -> !p.startsWith(folder + "/"));
		return found;
	}

	/** @return whether there is no file of a book at all, as before the first edition */
	public boolean isNothing() {
		return edition.isEmpty() && content.names().isEmpty();
	}

	/** @return "edition 3f2a9c01de of 2026-04-02, by Trine Aasen", "the work in hand", or "nothing" */
	public String shown() {
		return edition.map(e -> "edition " + e.shown()).orElse(isNothing() ? "nothing" : "the work in hand");
	}
}
