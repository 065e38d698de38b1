package org.setwright.editions.joining;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.git.InHand;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.written.RuleFiles;
import org.setwright.editions.written.TableFiles;
import org.setwright.editions.written.WrittenRule;

/**
 * Joins a file of rules or rows that both sides changed: what only one side changed is taken from it, and what both changed in
 * different ways is a conflict, also where their lines do not touch, because nobody wrote that mixture.
 */
final class RuleFileJoin {
	private final String path;
	private final String ours;
	private final String theirs;
	private final Map<WrittenRule, Optional<WrittenRule>> baseOfOurs = new LinkedHashMap<>();
	private final Map<WrittenRule, Optional<WrittenRule>> baseOfTheirs = new LinkedHashMap<>();
	private final Map<WrittenRule, WrittenRule> oursOfBase = new HashMap<>();
	private final Map<WrittenRule, WrittenRule> theirsOfBase = new HashMap<>();
	private final List<Conflict> conflicts = new ArrayList<>();
	private final Map<WrittenRule, Optional<String>> replaced = new TreeMap<>(Comparator.comparingInt(WrittenRule::start).reversed());
	private final List<WrittenRule> added = new ArrayList<>();

	private RuleFileJoin(String path, String base, String ours, String theirs) {
		this.path = path;
		this.ours = ours;
		this.theirs = theirs;
		List<WrittenRule> before = rules(path, base);
		changes(before, rules(path, ours), baseOfOurs, oursOfBase);
		changes(before, rules(path, theirs), baseOfTheirs, theirsOfBase);
	}

	/** What came of it. @param text without the conflicts: those stand as on our side @param conflicts in the order of our file */
	record Joined(String text, List<Conflict> conflicts) {
	}

	/**
	 * @param choices the text for each conflict that was decided, by {@link Conflict#what}; empty to leave it out
	 * @return empty when what stands between the rules, or the headings of a table, changed on both sides
	 */
	static Optional<Joined> of(String path, String base, String ours, String theirs, Map<String, Optional<String>> choices) {
		boolean changedHere = !between(path, ours).equals(between(path, base));
		boolean changedThere = !between(path, theirs).equals(between(path, base));
		if (changedThere && (changedHere || path.endsWith(".csv"))) {
			return between(path, ours).equals(between(path, theirs)) ? Optional.of(joined(path, base, ours, theirs, choices)) : Optional.empty();
		} else if (changedHere && path.endsWith(".csv")) {
			return Optional.empty();
		} else if (!changedThere) {
			return Optional.of(joined(path, base, ours, theirs, choices));
		}
		Joined turned = joined(path, base, theirs, ours, choices);
		return Optional.of(new Joined(turned.text(), turned.conflicts().stream().map(Conflict::turned).toList()));
	}

	private static Joined joined(String path, String base, String ours, String theirs, Map<String, Optional<String>> choices) {
		RuleFileJoin join = new RuleFileJoin(path, plain(base), plain(ours), plain(theirs));
		join.decide(rules(path, plain(base)), choices);
		return new Joined(join.text(), join.conflicts);
	}

	/** What a file holds besides rules or rows, free of layout. */
	private static String between(String path, String text) {
		StringBuilder left = new StringBuilder(plain(text));
		List<WrittenRule> rules = rules(path, plain(text));
		for (int i = rules.size() - 1; i >= 0; i--) {
			left.replace(rules.get(i).start(), rules.get(i).end(), " ");
		}
		return left.toString().strip().replaceAll("\\s+", " ");
	}

	private static String plain(String text) {
		return text.startsWith("\uFEFF") ? text.substring(1) : text;
	}

	private static List<WrittenRule> rules(String path, String text) {
		return path.endsWith(".csv") ? TableFiles.rows(path, text) : RuleFiles.rules(path, text);
	}

	private static void changes(List<WrittenRule> before, List<WrittenRule> after, Map<WrittenRule, Optional<WrittenRule>> baseOf,
			Map<WrittenRule, WrittenRule> ofBase) {
		InHand none = InHand.of(Map.of());
		for (RuleChange change : BookChanges.rules(new BookAt(Optional.empty(), none, before), new BookAt(Optional.empty(), none, after))) {
			change.after().ifPresent(a -> baseOf.put(a, change.before()));
			change.before().ifPresent(b -> change.after().ifPresent(a -> ofBase.put(b, a)));
		}
	}

	private void decide(List<WrittenRule> base, Map<String, Optional<String>> choices) {
		for (WrittenRule was : base) {
			WrittenRule here = oursOfBase.get(was);
			WrittenRule there = theirsOfBase.get(was);
			boolean changedHere = here == null || !same(here, was);
			boolean changedThere = there == null || !same(there, was);
			if (!changedThere || here == null && there == null || here != null && there != null && same(here, there)) {
				continue;
			} else if (!changedHere) {
				replaced.put(here, Optional.ofNullable(there).map(WrittenRule::text));
			} else {
				conflict(Conflict.of(path, Optional.of(was), Optional.ofNullable(here), Optional.ofNullable(there)), here, there, choices);
			}
		}
		for (Map.Entry<WrittenRule, Optional<WrittenRule>> fresh : baseOfTheirs.entrySet()) {
			WrittenRule there = fresh.getKey();
			if (fresh.getValue().isEmpty()) {
				Optional<WrittenRule> here = baseOfOurs.entrySet().stream().filter(o -> o.getValue().isEmpty()).map(Map.Entry::getKey)
						.filter(o -> alike(o, there)).findFirst();
				if (here.isEmpty()) {
					added.add(there);
				} else if (!same(here.get(), there)) {
					conflict(Conflict.of(path, Optional.empty(), here, Optional.of(there)), here.get(), there, choices);
				}
			}
		}
	}

	/** Whether two new rules claim the same place: the same name, or the same conditions in a table. */
	private static boolean alike(WrittenRule one, WrittenRule other) {
		return one.isRow() ? one.parts().when().equals(other.parts().when()) : one.name().equals(other.name());
	}

	private void conflict(Conflict conflict, WrittenRule here, WrittenRule there, Map<String, Optional<String>> choices) {
		Optional<String> choice = choices.get(conflict.what());
		if (choice == null) {
			conflicts.add(conflict);
		} else if (here != null) {
			replaced.put(here, choice);
		} else if (choice.isPresent()) {
			added.add(there);
		}
	}

	private static boolean same(WrittenRule one, WrittenRule other) {
		return one.isRow() ? one.parts().equals(other.parts()) : lines(one).equals(lines(other));
	}

	private static String lines(WrittenRule rule) {
		return rule.text().replace("\r\n", "\n").replaceAll("[ \t]+\n", "\n");
	}

	private String text() {
		StringBuilder text = new StringBuilder(ours);
		Map<Integer, List<WrittenRule>> after = new TreeMap<>(Comparator.reverseOrder());
		for (WrittenRule rule : added) {
			after.computeIfAbsent(place(rule), x -> new ArrayList<>()).add(rule);
		}
		Map<Integer, Runnable> edits = new TreeMap<>(Comparator.reverseOrder());
		replaced.forEach((rule, by) -> edits.put(2 * rule.start() + 1, () -> replace(text, rule, by)));
		after.forEach((at, rules) -> edits.put(2 * at, () -> insert(text, at, rules)));
		edits.values().forEach(Runnable::run);
		return text.toString();
	}

	/** Where a new rule of the other side goes: behind the rule it follows there and what is new behind that here, else at the end. */
	private int place(WrittenRule rule) {
		WrittenRule before = null;
		for (WrittenRule other : baseOfTheirs.keySet()) {
			Optional<WrittenRule> here = baseOfTheirs.get(other).map(oursOfBase::get);
			before = other.start() < rule.start() && here.isPresent() ? here.get() : before;
		}
		if (before == null) {
			return ours.length();
		}
		for (Map.Entry<WrittenRule, Optional<WrittenRule>> here : baseOfOurs.entrySet()) {
			if (here.getKey().start() > before.start()) {
				if (here.getValue().isPresent()) {
					return before.end();
				}
				before = here.getKey();
			}
		}
		return ours.length();
	}

	private static void replace(StringBuilder text, WrittenRule rule, Optional<String> by) {
		if (by.isPresent()) {
			text.replace(rule.start(), rule.end(), by.get());
			return;
		}
		int end = rule.end();
		for (int breaks = 0; end < text.length() && Character.isWhitespace(text.charAt(end)) && breaks < (rule.isRow() ? 1 : 2); end++) {
			breaks += text.charAt(end) == '\n' ? 1 : 0;
		}
		text.delete(rule.start(), end);
	}

	private static void insert(StringBuilder text, int at, List<WrittenRule> rules) {
		StringBuilder added = new StringBuilder();
		for (WrittenRule rule : rules) {
			added.append(rule.isRow() ? "\n" : "\n\n").append(rule.text());
		}
		if (at < text.length()) {
			text.insert(at, added);
		} else {
			while (text.length() > 0 && Character.isWhitespace(text.charAt(text.length() - 1))) {
				text.setLength(text.length() - 1);
			}
			text.append(text.length() == 0 ? added.toString().stripLeading() : added).append('\n');
		}
	}
}
