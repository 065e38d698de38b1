package org.setwright.editions.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.book.JobText;
import org.setwright.book.ShopSettingText;
import org.setwright.book.ShopSettings;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.written.WrittenRule;

/**
 * What is different between two editions, or an edition and the work in hand. Immutable.
 *
 * @param rules what became of every rule and row that is not as it was, in the order of the later book, then those gone
 * @param settings what became of every setting of the shop's own that is not as it was; none when their file has errors on a side
 * @param jobs what became of every job that is not as it was, by file
 * @param files other files of the book that differ, sorted; {@code settings.yaml} only when {@code settings} holds none
 */
public record BookChanges(BookAt before, BookAt after, List<RuleChange> rules, List<SettingChange> settings, List<JobChange> jobs,
		List<String> files) {
	public BookChanges {
		rules = List.copyOf(rules);
		settings = List.copyOf(settings);
		jobs = List.copyOf(jobs);
		files = List.copyOf(files);
	}

	/** Compares two books, rules found again by what they hold. */
	public static BookChanges between(Shelf shelf, BookAt before, BookAt after) throws NotDone {
		return between(shelf, before, after, Map.of(), Map.of());
	}

	/**
	 * Compares two books.
	 *
	 * @param knownBefore names for rules that were followed through the editions between; what has none is found by what it holds
	 * @param knownAfter the same names for the later ones
	 */
	public static BookChanges between(Shelf shelf, BookAt before, BookAt after, Map<WrittenRule, String> knownBefore,
			Map<WrittenRule, String> knownAfter) throws NotDone {
		List<String> files = new ArrayList<>();
		Map<String, String> all = new TreeMap<>(before.content().names());
		all.putAll(after.content().names());
		for (String path : all.keySet()) {
			if (!sameText(before, after, path) && !path.startsWith("jobs/") && !path.endsWith(".drl") && !path.endsWith(".csv")) {
				files.add(path);
			}
		}
		List<SettingChange> settings = files.contains(ShopSettings.FILE) ? settings(shelf, before, after) : List.of();
		if (!settings.isEmpty()) {
			files.remove(ShopSettings.FILE);
		}
		return new BookChanges(before, after, rules(before, after, knownBefore, knownAfter).stream().filter(c -> c.kind() != RuleChange.Kind.SAME).toList(),
				settings, jobs(shelf, before, after), files);
	}

	private static List<SettingChange> settings(Shelf shelf, BookAt before, BookAt after) throws NotDone {
		Optional<List<ShopSettingText>> was = shelf.ownSettings(before);
		Optional<List<ShopSettingText>> is = shelf.ownSettings(after);
		return was.isPresent() && is.isPresent() ? SettingChange.between(was.get(), is.get()) : List.of();
	}

	/** @return what became of every rule and row, also of those that are as they were */
	public static List<RuleChange> rules(BookAt before, BookAt after) {
		return rules(before, after, Map.of(), Map.of());
	}

	private static List<RuleChange> rules(BookAt before, BookAt after, Map<WrittenRule, String> knownBefore, Map<WrittenRule, String> knownAfter) {
		return Matching.of(before.rules(), after.rules(), knownBefore, knownAfter).stream().map(RuleChange::of).toList();
	}

	/** Whether a file holds the same on both sides; how its lines end does not count, because Git may change that on its way. */
	private static boolean sameText(BookAt before, BookAt after, String path) throws NotDone {
		String was = before.content().names().get(path);
		String is = after.content().names().get(path);
		return was != null && is != null && (was.equals(is) || plain(Shelf.text(before.content(), path)).equals(plain(Shelf.text(after.content(), path))));
	}

	private static String plain(String text) {
		return text.replace("\r\n", "\n");
	}

	private static List<JobChange> jobs(Shelf shelf, BookAt before, BookAt after) throws NotDone {
		Map<String, String> was = before.in("jobs");
		Map<String, String> is = after.in("jobs");
		List<JobChange> changes = new ArrayList<>();
		Map<String, String> gone = new HashMap<>();
		for (String path : was.keySet()) {
			if (!is.containsKey(path)) {
				gone.put(shelf.job(before, path).job().name(), path);
			}
		}
		for (String path : is.keySet()) {
			JobText now = null;
			String from = was.containsKey(path) ? path : null;
			if (from == null) {
				now = shelf.job(after, path);
				from = gone.remove(now.job().name());
			} else if (sameText(before, after, path)) {
				continue;
			}
			now = now == null ? shelf.job(after, path) : now;
			changes.add(JobChange.of(from == null ? Optional.empty() : Optional.of(shelf.job(before, from)), Optional.of(now)));
		}
		for (String path : gone.values().stream().sorted().toList()) {
			changes.add(JobChange.of(Optional.of(shelf.job(before, path)), Optional.empty()));
		}
		return changes;
	}

	/** @return whether both hold the same */
	public boolean none() {
		return rules.isEmpty() && settings.isEmpty() && jobs.isEmpty() && files.isEmpty();
	}

	/** @return the changes of rules that some job may come to something else by */
	public List<RuleChange> thatMatter() {
		return rules.stream().filter(RuleChange::matters).toList();
	}
}
