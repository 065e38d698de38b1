package org.setwright.check.strength;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.setwright.check.strength.Mistake.Kind;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Authority;

/** Thinks up the mistakes somebody could make in a rule. The same rule gives the same mistakes in the same order. */
public final class Mistakes {
	private final Rule rule;
	private final Collection<Rule> rules;
	private final Apart apart;
	private final List<Mistake> mistakes = new ArrayList<>();
	private final Set<Rule> seen = new HashSet<>();

	private Mistakes(Rule rule, Collection<Rule> rules, Apart apart) {
		this.rule = rule;
		this.rules = rules;
		this.apart = apart;
		seen.add(rule);
	}

	/** @return every mistake of every rule that leaves a rule which can be read, by position; {@code rules} are the whole book */
	public static List<Mistake> in(List<Rule> rules) {
		Apart apart = new Apart(rules);
		return rules.stream().flatMap(r -> in(r, rules, apart).stream()).toList();
	}

	private static List<Mistake> in(Rule rule, Collection<Rule> rules, Apart apart) {
		Mistakes mistakes = new Mistakes(rule, rules, apart);
		mistakes.mistakes.add(new Mistake(rule, Kind.RULE_LEFT_OUT, "the whole rule left out", rule.at(), Optional.empty()));
		Slip.inAll(rule.when(), Slip::inCondition, Condition::at).forEach(s -> mistakes.add(s, s.instead().orElse(List.of()), rule.then()));
		mistakes.outcomes();
		mistakes.authority();
		return mistakes.mistakes;
	}

	private void outcomes() {
		for (int i = 0; i < rule.then().size(); i++) {
			Action action = rule.then().get(i);
			List<Action> without = new ArrayList<>(rule.then());
			without.remove(i);
			if (!without.isEmpty()) {
				add(new Slip<>(Kind.OUTCOME_DROPPED, said(action) + " left out", action.at(), Optional.empty()), rule.when(), without);
			}
			if (action instanceof Action.Propose propose && propose.value() instanceof Operand.Literal literal) {
				Neighbours.of(propose.setting().domain(), literal.value()).stream().findFirst().ifPresent(other -> {
					List<Action> with = new ArrayList<>(rule.then());
					with.set(with.indexOf(action), new Action.Propose(propose.setting(), new Operand.Literal(other), action.at()));
					add(new Slip<>(Kind.VALUE_EXCHANGED, propose.setting().label() + " proposed as " + other.text() + " instead of "
							+ literal.value().text(), action.at(), Optional.empty()), rule.when(), with);
				});
			}
		}
	}

	private static String said(Action action) {
		if (action instanceof Action.Propose propose) {
			return "the proposal for " + propose.setting().label();
		}
		return action instanceof Action.Find find ? "the finding " + find.finding() : "what it says besides";
	}

	/** Only where another rule stands close enough for the change to matter, and no contradiction keeps the two apart on every job. */
	private void authority() {
		int now = rule.authority().ordinal();
		Authority other = Authority.values()[now + 1 < Authority.values().length ? now + 1 : now - 1];
		if (rules.stream().anyMatch(r -> r != rule && (r.authority() == other || r.authority() == rule.authority()) && rivals(r) && !apart.never(rule, r))) {
			put(new Slip<>(Kind.AUTHORITY_CHANGED, other.label() + " instead of " + rule.authority().label(), rule.at(), Optional.empty()),
					new Rule(rule.name(), other, rule.because(), rule.source(), rule.when(), rule.then(), rule.at(), rule.text()));
		}
	}

	/** Whether it proposes another value for a setting that this rule proposes. */
	private boolean rivals(Rule other) {
		return rule.proposals().stream().anyMatch(mine -> other.proposals().stream()
				.anyMatch(p -> p.setting().equals(mine.setting()) && !p.value().equals(mine.value())));
	}

	private void add(Slip<?> slip, List<Condition> when, List<Action> then) {
		put(slip, new Rule(rule.name(), rule.authority(), rule.because(), rule.source(), when, then, rule.at(), rule.text()));
	}

	private void put(Slip<?> slip, Rule mistaken) {
		if (Names.allBound(mistaken) && seen.add(mistaken)) {
			mistakes.add(new Mistake(rule, slip.kind(), slip.sentence(), slip.at(), Optional.of(mistaken)));
		}
	}
}
