package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.setwright.book.Nearest;
import org.setwright.book.Problem;

/**
 * In which order rules are asked, so that every finding is complete before a rule asks for it. Rules of level 0 ask for
 * no finding; a rule of level n asks only for findings made by rules of lower levels. This alone makes the order of
 * rules within a book meaningless.
 */
public final class FindingOrder {
	private final Map<String, List<Rule>> makers = new LinkedHashMap<>();
	private final Map<Rule, Integer> levels = new IdentityHashMap<>();
	private final Map<Rule, Set<String>> asked = new IdentityHashMap<>();
	private final List<Rule> sequence;
	private final List<Problem> problems = new ArrayList<>();
	private boolean circular;

	private FindingOrder(Collection<Rule> rules) {
		for (Rule rule : rules) {
			rule.finds().forEach(f -> makers.computeIfAbsent(f, x -> new ArrayList<>()).add(rule));
		}
		rules.forEach(this::checkKnown);
		rules.forEach(r -> asked.put(r, asked(r.when()).stream().map(Condition.Found::finding).collect(Collectors.toSet())));
		rules.forEach(rule -> findLevel(rule, new ArrayList<>()));
		sequence = rules.stream().sorted(Comparator.comparingInt(levels::get)).toList();
	}

	/** @return the order of {@code rules}, with problems for findings nobody makes and for circles */
	public static FindingOrder of(Collection<Rule> rules) {
		return new FindingOrder(rules);
	}

	/** @return findings nobody makes, and rules that go round in a circle */
	public List<Problem> problems() {
		return List.copyOf(problems);
	}

	/** @return whether some rule depends on its own finding, so that the rules cannot be tried in any order */
	public boolean circular() {
		return circular;
	}

	/** @return the level of {@code rule}, from 0 */
	public int level(Rule rule) {
		return levels.get(rule);
	}

	/** @return all rules, lower levels first, else in book order */
	public List<Rule> sequence() {
		return sequence;
	}

	/** @return the rules that make {@code finding} */
	public List<Rule> makers(String finding) {
		return makers.getOrDefault(finding, List.of());
	}

	/** @return the findings {@code rule}, one of this order, asks for */
	public Set<String> asked(Rule rule) {
		return asked.get(rule);
	}

	private static List<Condition.Found> asked(List<Condition> conditions) {
		List<Condition.Found> asked = new ArrayList<>();
		conditions.forEach(c -> collect(c, asked));
		return asked;
	}

	private static void collect(Condition condition, List<Condition.Found> into) {
		if (condition instanceof Condition.Found found) {
			into.add(found);
		}
		condition.inner().forEach(c -> collect(c, into));
	}

	private void checkKnown(Rule rule) {
		for (Condition.Found found : asked(rule.when())) {
			if (!makers.containsKey(found.finding())) {
				problems.add(Problem.error(found.at(), "No rule finds " + found.finding() + ", so this can never hold.",
						Nearest.to(found.finding(), new TreeSet<>(makers.keySet())).map(n -> "Did you mean " + n + "?")
								.orElse("Add a rule that says find( " + found.finding() + " );."))
						.instead(found.finding(), Nearest.several(found.finding(), new TreeSet<>(makers.keySet()), 3)));
			}
		}
	}

	/** @param open the rules whose levels wait for this one's */
	private int findLevel(Rule rule, List<Rule> open) {
		Integer known = levels.get(rule);
		if (known != null) {
			return known;
		}
		if (open.stream().anyMatch(r -> r == rule)) {
			circular = true;
			problems.add(Problem.error(rule.at(), "The rule \"" + rule.name() + "\" depends on its own finding, by way of: "
					+ open.stream().map(Rule::name).collect(Collectors.joining(", ")) + ".",
					"Let one of these rules test job fields instead of the finding."));
			return 0;
		}
		open.add(rule);
		int level = 0;
		for (Condition.Found found : asked(rule.when())) {
			for (Rule maker : makers(found.finding())) {
				level = Math.max(level, 1 + findLevel(maker, open));
			}
		}
		open.remove(open.size() - 1);
		levels.put(rule, level);
		return level;
	}
}
