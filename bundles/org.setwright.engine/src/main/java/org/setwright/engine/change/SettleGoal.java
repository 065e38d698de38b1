package org.setwright.engine.change;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** That a setting settles at a value. */
final class SettleGoal {
	private final Setting setting;
	private final Value value;
	private final Map<Authority, List<Rule>> strongestFirst;

	/** @param rules all rules of the book */
	SettleGoal(List<Rule> rules, Setting setting, Value value) {
		this.setting = setting;
		this.value = value;
		strongestFirst = rules.stream().filter(r -> !r.proposals(setting).isEmpty())
				.collect(Collectors.groupingBy(Rule::authority, () -> new TreeMap<>(Comparator.reverseOrder()), Collectors.toList()));
	}

	/** @return the rules that could propose anything for the setting */
	List<Rule> rules() {
		return strongestFirst.values().stream().flatMap(List::stream).toList();
	}

	/**
	 * @return empty when the setting settles at the value. Else, when some rule says something else, the places that rule
	 *         rests on and those that keep stronger rules from saying the value; when none does, those that keep any rule
	 *         from saying it.
	 */
	Optional<Set<JobField>> missed(Verdicts verdicts, JobFacts facts) {
		Set<JobField> looked = new LinkedHashSet<>();
		for (List<Rule> equals : strongestFirst.values()) {
			List<Rule> speaking = equals.stream().filter(r -> verdicts.of(r).truth() == Truth.TRUE).toList();
			Optional<Rule> other = speaking.stream().filter(r -> !says(r, verdicts.of(r), facts))
					.min(Comparator.comparingInt(r -> verdicts.looked(r).size()));
			if (other.isPresent()) {
				looked.addAll(verdicts.looked(other.get()));
				return Optional.of(looked);
			} else if (!speaking.isEmpty()) {
				return Optional.empty();
			}
			equals.stream().filter(this::couldSay).forEach(r -> looked.addAll(verdicts.looked(r)));
		}
		return Optional.of(looked);
	}

	private boolean says(Rule rule, Verdict verdict, JobFacts facts) {
		return rule.proposals(setting).stream().allMatch(p -> verdict.ways().stream()
				.allMatch(way -> p.value() instanceof Operand.Literal literal ? literal.value().same(value)
						: facts.answer(way.values().get(p.value())).value().filter(value::same).isPresent()));
	}

	private boolean couldSay(Rule rule) {
		return rule.proposals(setting).stream().anyMatch(p -> !(p.value() instanceof Operand.Literal literal) || literal.value().same(value));
	}
}
