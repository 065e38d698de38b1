package org.setwright.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.Problem;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Rule;

/** A rule book that differs from another in a few rules. Immutable; one amendment may be tried on many jobs. */
public final class Amendment {
	private final List<Rule> before;
	private final List<Rule> rules;
	private final FindingOrder order;
	private final Map<Rule, Rule> kept;
	private final List<Rule> dropped;
	private final List<Rule> added;
	private final List<Rule> mayDiffer;
	private Reach reach;

	private Amendment(List<Rule> before, List<Rule> rules, Map<Rule, Rule> kept, List<Rule> dropped) {
		this.before = before;
		this.rules = List.copyOf(rules);
		this.dropped = List.copyOf(dropped);
		this.kept = kept;
		added = rules.stream().filter(r -> !kept.containsKey(r)).toList();
		order = FindingOrder.of(rules);
		mayDiffer = Reach.differing(this);
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
		return new Amendment(rules, after, Collections.unmodifiableMap(kept), List.of(rule));
	}

	/**
	 * @param before the rules of the book that is amended
	 * @param after what it holds instead; whatever is written alike in the same file is the same rule
	 * @return to be tried only where it is sound
	 */
	public static Amendment between(List<Rule> before, List<Rule> after) {
		Map<Written, Deque<Rule>> known = new HashMap<>();
		before.forEach(r -> known.computeIfAbsent(Written.of(r), w -> new ArrayDeque<>(1)).add(r));
		Map<Rule, Rule> kept = new IdentityHashMap<>();
		Set<Rule> left = Collections.newSetFromMap(new IdentityHashMap<>());
		for (Rule rule : after) {
			Deque<Rule> same = known.get(Written.of(rule));
			if (same != null && !same.isEmpty()) {
				left.add(same.peek());
				kept.put(rule, same.poll());
			}
		}
		return new Amendment(before, after, Collections.unmodifiableMap(kept), before.stream().filter(r -> !left.contains(r)).toList());
	}

	/** A rule by its words. */
	private record Written(String file, String text) {
		static Written of(Rule rule) {
			return new Written(rule.at().file(), rule.text());
		}
	}

	/** @return how many rules are new or gone; one that was changed counts twice */
	public int size() {
		return added.size() + dropped.size();
	}

	/** @return what is wrong with the amended rules taken together, see {@link Reading#together}; then nothing may be made of them */
	public List<Problem> problems() {
		List<Problem> problems = new ArrayList<>(Reading.sameNames(rules));
		problems.addAll(order.problems());
		return problems;
	}

	/** @return what {@code rule}, one of the amended book, was before; empty when it is new */
	public Optional<Rule> before(Rule rule) {
		return Optional.ofNullable(kept.get(rule));
	}

	/** @return whether no rule of the amended book depends on its own finding; if one does, the amendment cannot be tried */
	public boolean sound() {
		return !order.circular();
	}

	/** @return the rules of the amended book, by position */
	public List<Rule> rules() {
		return rules;
	}

	/** The rules of the book as it was. */
	List<Rule> before() {
		return before;
	}

	/** @param number of a rule of the amended book @return the number it had before; -1 for a new one */
	public int before(int number) {
		return reach().was()[number];
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

	/** The rules that may come out differently on a job: the new ones, and those that ask for a finding which may. */
	List<Rule> mayDiffer() {
		return mayDiffer;
	}

	/** What the amendment can change in the standing of rules. */
	synchronized Reach reach() {
		if (reach == null) {
			reach = Reach.of(this);
		}
		return reach;
	}

	/** What each rule was that the amendment leaves alone, by what it is now. */
	Map<Rule, Rule> kept() {
		return kept;
	}
}
