package org.setwright.editions.impact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.written.WrittenRule;
import org.setwright.engine.Amendment;
import org.setwright.engine.language.Rule;

/** The earlier book with some of the changes made. */
final class Mixes {
	private final List<Rule> before;
	private final List<Rule> after;
	private final List<RuleChange> changes;
	private final Map<String, Integer> changeOfOld = new HashMap<>();
	private final Map<BitSet, Amendment> made = new HashMap<>();

	/** @param changes those that matter, of the rules {@code before} and {@code after} */
	Mixes(List<Rule> before, List<Rule> after, List<RuleChange> changes) {
		this.before = before;
		this.after = after;
		this.changes = List.copyOf(changes);
		for (int i = 0; i < changes.size(); i++) {
			Optional<WrittenRule> was = changes.get(i).before();
			if (was.isPresent()) {
				changeOfOld.put(was.get().name(), i);
			}
		}
	}

	List<RuleChange> changes() {
		return changes;
	}

	/** @param chosen which changes are made, by their place in the list */
	synchronized Amendment with(BitSet chosen) {
		Amendment known = made.get(chosen);
		if (known == null) {
			known = Amendment.between(before, rules(chosen));
			made.put((BitSet) chosen.clone(), known);
		}
		return known;
	}

	private List<Rule> rules(BitSet chosen) {
		List<Rule> rules = new ArrayList<>();
		for (Rule rule : before) {
			Integer change = changeOfOld.get(rule.name());
			if (change == null || !chosen.get(change)) {
				rules.add(rule);
			} else {
				later(changes.get(change)).ifPresent(rules::add);
			}
		}
		for (int i = chosen.nextSetBit(0); i >= 0; i = chosen.nextSetBit(i + 1)) {
			if (changes.get(i).before().isEmpty()) {
				later(changes.get(i)).ifPresent(rules::add);
			}
		}
		return rules;
	}

	private Optional<Rule> later(RuleChange change) {
		return change.after().flatMap(written -> after.stream().filter(r -> r.name().equals(written.name())).findFirst());
	}
}
