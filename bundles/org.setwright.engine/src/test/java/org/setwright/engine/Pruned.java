package org.setwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setwright.book.Position;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Rule;
import org.setwright.engine.whynot.Blocker;
import org.setwright.engine.whynot.WhyNot;

/** Rewrites rules with some of their conditions left out, as text, so that they can be run anew. */
final class Pruned {
	private final Map<String, List<String>> lines;

	/** @param texts the rule files, by path */
	Pruned(Map<String, String> texts) {
		lines = texts.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().lines().toList()));
	}

	/** @return the numbers of the rule's own conditions in which blockers stand */
	static Set<Integer> blocked(WhyNot why) {
		List<Condition> conditions = why.rule().when();
		return IntStream.range(0, conditions.size())
				.filter(i -> why.blockers().stream().anyMatch(b -> holds(conditions.get(i), b))).boxed().collect(Collectors.toSet());
	}

	private static boolean holds(Condition condition, Blocker blocker) {
		return condition == blocker.condition() || condition.inner().stream().anyMatch(c -> holds(c, blocker));
	}

	/** @return a rule called {@code name} with the conditions of {@code rule} but for {@code left}; empty when others need those */
	Optional<String> without(Rule rule, Set<Integer> left, String name) {
		List<String> kept = new ArrayList<>();
		List<String> gone = new ArrayList<>();
		for (int i = 0; i < rule.when().size(); i++) {
			(left.contains(i) ? gone : kept).add(text(rule, i));
		}
		String rest = String.join("\n\t", kept);
		boolean needed = gone.stream().flatMap(g -> java.util.regex.Pattern.compile("(\\$\\w+)\\s*:").matcher(g).results())
				.anyMatch(m -> rest.contains(m.group(1)));
		return needed ? Optional.empty() : Optional.of(Books.rule(name, "shop practice", rest, "caution( NOTE, \"x\" );"));
	}

	/** Conditions that begin a line are cut out by whole lines, so that a bracket before them goes with them. */
	private String text(Rule rule, int condition) {
		List<String> file = lines.get(rule.at().file());
		Position from = rule.when().get(condition).at();
		boolean first = condition == 0 || rule.when().get(condition - 1).at().line() < from.line();
		boolean last = condition == rule.when().size() - 1;
		StringBuilder text = new StringBuilder();
		int line = from.line() - 1;
		int column = first ? 0 : from.column() - 1;
		while (last ? !file.get(line).strip().equals("then") : line + 1 < rule.when().get(condition + 1).at().line()) {
			text.append(file.get(line++).substring(column).replaceAll("//.*", "")).append(' ');
			column = 0;
		}
		if (!last && line + 1 == from.line()) {
			text.append(file.get(line), column, rule.when().get(condition + 1).at().column() - 1);
		}
		return text.toString();
	}
}
