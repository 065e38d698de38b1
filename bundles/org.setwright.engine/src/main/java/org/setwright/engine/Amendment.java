package org.setwright.engine;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;

/** A rule book that differs from another in a few rules. Immutable; one amendment may be tried on many jobs. */
public final class Amendment {
	private final List<Rule> rules;
	private final FindingOrder order;
	private final Map<Rule, Rule> kept;
	private final List<Rule> dropped;
	private final List<Rule> added;

	private Amendment(List<Rule> rules, Map<Rule, Rule> kept, List<Rule> dropped) {
		this.rules = List.copyOf(rules);
		this.dropped = List.copyOf(dropped);
		this.kept = kept;
		added = rules.stream().filter(r -> !kept.containsKey(r)).toList();
		order = FindingOrder.of(rules);
	}

	static Amendment replacing(List<Rule> rules, Rule rule, List<Rule> others) {
		List<Rule> after = new ArrayList<>();
		Map<Rule, Rule> kept = new IdentityHashMap<>();
		for (Rule each : rules) {
			if (each == rule) {
				after.addAll(others);
			} else {
				after.add(each);
				kept.put(each, each);
			}
		}
		if (kept.size() == rules.size()) {
			throw new IllegalArgumentException("not a rule of this book: " + rule.name());
		}
		return new Amendment(after, Collections.unmodifiableMap(kept), List.of(rule));
	}

	/** @return the rules of the amended book, by position */
	public List<Rule> rules() {
		return rules;
	}

	FindingOrder order() {
		return order;
	}

	/** The rules that are no more, or no more as they were. */
	List<Rule> dropped() {
		return dropped;
	}

	/** The rules that are new. */
	List<Rule> added() {
		return added;
	}

	/** What each rule was that the amendment leaves alone, by what it is now. */
	Map<Rule, Rule> kept() {
		return kept;
	}
}
