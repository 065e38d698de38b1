package org.setwright.editions.lineage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.git.EditionLog;
import org.setwright.editions.kept.EditionId;
import org.setwright.editions.kept.Kept;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.editions.written.WrittenRule;

/** Follows rules and files back through the editions. */
public final class Lineage {
	private final Shelf shelf;
	private final EditionLog log;
	private final Map<EditionId, Map<WrittenRule, Set<WrittenRule>>> followed = new HashMap<>();
	private final Map<WrittenRule, List<RuleStep>> steps = new LinkedHashMap<>();

	private Lineage(Shelf shelf, EditionLog log) {
		this.shelf = shelf;
		this.log = log;
	}

	/**
	 * @param start the edition that {@code rules} are of
	 * @return for each rule the editions that made or changed it, newest first; where lines were joined and both had it, the line
	 *         that has it as it is now counts
	 */
	public static Map<WrittenRule, List<RuleStep>> of(Shelf shelf, EditionLog log, Kept start, Collection<WrittenRule> rules) throws NotDone {
		Lineage lineage = new Lineage(shelf, log);
		for (WrittenRule rule : rules) {
			lineage.steps.put(rule, new ArrayList<>());
			lineage.follow(start.id(), rule, Set.of(rule));
		}
		for (Kept edition : log.leadingTo(start.id())) {
			Map<WrittenRule, Set<WrittenRule>> here = lineage.followed.remove(edition.id());
			if (here != null) {
				lineage.goBack(edition, here);
			}
		}
		return lineage.steps;
	}

	private void follow(EditionId at, WrittenRule then, Set<WrittenRule> now) {
		followed.computeIfAbsent(at, x -> new LinkedHashMap<>()).computeIfAbsent(then, x -> new LinkedHashSet<>()).addAll(now);
	}

	private void goBack(Kept edition, Map<WrittenRule, Set<WrittenRule>> here) throws NotDone {
		Map<EditionId, Map<WrittenRule, RuleChange>> changes = new LinkedHashMap<>();
		for (EditionId parent : edition.parents()) {
			BookAt before = shelf.at(log.edition(parent).orElseThrow());
			Map<WrittenRule, RuleChange> byRule = new HashMap<>();
			BookChanges.rules(before, shelf.at(edition)).forEach(c -> c.after().ifPresent(a -> byRule.put(a, c)));
			changes.put(parent, byRule);
		}
		here.forEach((then, now) -> goBack(edition, then, now, changes));
	}

	private void goBack(Kept edition, WrittenRule then, Set<WrittenRule> now, Map<EditionId, Map<WrittenRule, RuleChange>> changes) {
		RuleChange step = null;
		for (Map.Entry<EditionId, Map<WrittenRule, RuleChange>> parent : changes.entrySet()) {
			RuleChange change = parent.getValue().get(then);
			if (change.kind() == RuleChange.Kind.SAME) {
				follow(parent.getKey(), change.before().orElseThrow(), now);
				return;
			}
		}
		for (Map.Entry<EditionId, Map<WrittenRule, RuleChange>> parent : changes.entrySet()) {
			RuleChange change = parent.getValue().get(then);
			if (change.before().isPresent()) {
				follow(parent.getKey(), change.before().get(), now);
				step = step == null ? change : step;
			}
		}
		RuleChange made = step != null ? step : new RuleChange(java.util.Optional.empty(), java.util.Optional.of(then), Set.of());
		now.forEach(rule -> steps.get(rule).add(new RuleStep(edition, made)));
	}

	/** @param path below the book @return the editions leading to {@code start} that made, changed or removed that file, newest first */
	public static List<Kept> ofFile(Shelf shelf, EditionLog log, Kept start, String path) throws NotDone {
		List<Kept> found = new ArrayList<>();
		for (Kept edition : log.leadingTo(start.id())) {
			String is = shelf.at(edition).content().names().get(path);
			boolean same = edition.parents().isEmpty() && is == null;
			for (EditionId parent : edition.parents()) {
				same |= Objects.equals(is, shelf.at(log.edition(parent).orElseThrow()).content().names().get(path));
			}
			if (!same) {
				found.add(edition);
			}
		}
		return found;
	}
}
