package org.setwright.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.explaining.Bases;
import org.setwright.engine.explaining.Reasoning;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Trial;
import org.setwright.engine.logic.Truth;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.engine.settling.Settlement;
import org.setwright.engine.startup.CheckList;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** One run of one job, step by step: try, compare with the rule engine, explain, settle. */
final class Run {
	private final List<Rule> rules;
	private final FindingOrder order;
	private final Map<Setting, List<Condition>> requirements;
	private final JobFacts job;
	private final Bases bases;
	private final Verdicts verdicts;
	private final Map<String, List<Firing>> makers = new HashMap<>();
	private final Map<JobField, Set<JobField>> toLookUp = new HashMap<>();

	/** @param verdicts of all {@code rules} on {@code job} */
	Run(List<Rule> rules, FindingOrder order, Map<Setting, List<Condition>> requirements, JobFacts job, Verdicts verdicts,
			Catalogue catalogue) {
		this.rules = rules;
		this.order = order;
		this.requirements = requirements;
		this.job = job;
		this.verdicts = verdicts;
		bases = new Bases(job, catalogue);
	}

	/** @param fired the rules that fired in the rule engine, by number */
	Outcome outcome(BitSet fired) {
		compare(fired);
		return outcome();
	}

	/** What the evaluator alone comes to. */
	Outcome outcome() {
		List<Firing> firings = firings();
		List<HeldOpen> heldOpen = heldOpen();
		Map<Setting, List<HeldOpen>> bySetting = bySetting(heldOpen);
		Map<Setting, List<Proposal>> proposals = proposals(firings);
		Map<Setting, Set<JobField>> perhaps = new HashMap<>();
		List<SettingOutcome> settings = new ArrayList<>();
		requirements.forEach((setting, conditions) -> {
			Verdict needed = Trial.of(conditions, job);
			List<Proposal> made = proposals.getOrDefault(setting, List.of());
			Need need = isOptional(setting) ? Need.NOT_NEEDED : need(needed.truth());
			if (need != Need.NOT_NEEDED || !made.isEmpty()) {
				perhaps.put(setting, lookUps(needed.unknowns()));
				settings.add(Settlement.settle(setting, need, made,
						bySetting.getOrDefault(setting, List.of())));
			}
		});
		List<Finding> findings = makers.entrySet().stream().map(e -> new Finding(e.getKey(), e.getValue()))
				.sorted(Comparator.comparing(Finding::name)).toList();
		return new Outcome(job.job(), settings, firings, heldOpen, findings, Settlement.cautions(firings),
				startUp(firings, heldOpen, settings), Settlement.toFindOut(settings, perhaps, heldOpen));
	}

	private List<StartUpCheck> startUp(List<Firing> firings, List<HeldOpen> heldOpen, List<SettingOutcome> settings) {
		CheckList checks = new CheckList(job, settings);
		int at = 0;
		for (Rule rule : rules) {
			for (Verdict.Way way : verdicts.of(rule).ways()) {
				checks.certain(firings.get(at++), way);
			}
		}
		heldOpen.forEach(checks::perhaps);
		return checks.inOrder();
	}

	private static Map<Setting, List<HeldOpen>> bySetting(List<HeldOpen> heldOpen) {
		Map<Setting, List<HeldOpen>> open = new HashMap<>();
		for (HeldOpen held : heldOpen) {
			held.rule().proposals().stream().map(Action.Propose::setting).distinct()
					.forEach(s -> open.computeIfAbsent(s, x -> new ArrayList<>()).add(held));
		}
		return open;
	}

	private static boolean isOptional(Setting setting) {
		return setting.requiredWhen().equals(Setting.OPTIONAL);
	}

	private static Need need(Truth truth) {
		return switch (truth) {
			case TRUE -> Need.NEEDED;
			case FALSE -> Need.NOT_NEEDED;
			case UNKNOWN -> Need.UNKNOWN;
		};
	}

	private void compare(BitSet fired) {
		for (int i = 0; i < rules.size(); i++) {
			if (fired.get(i) != (verdicts.of(rules.get(i)).truth() == Truth.TRUE)) {
				throw new Disagreement(rules.get(i).name());
			}
		}
	}

	/** Explains lower levels first, so that the reasons for a finding are there when a rule rests on it. */
	private List<Firing> firings() {
		Reasoning reasoning = new Reasoning(job, bases, verdicts, name -> makers.getOrDefault(name, List.of()));
		Map<Rule, List<Firing>> byRule = new IdentityHashMap<>();
		for (Rule rule : order.sequence()) {
			List<Firing> firings = verdicts.of(rule).ways().stream().map(w -> reasoning.firing(rule, w)).toList();
			byRule.put(rule, firings);
			if (!firings.isEmpty()) {
				FindingOrder.made(rule).forEach(f -> makers.computeIfAbsent(f, x -> new ArrayList<>()).addAll(firings));
			}
		}
		return rules.stream().flatMap(r -> byRule.get(r).stream()).toList();
	}

	private List<HeldOpen> heldOpen() {
		return rules.stream().filter(r -> verdicts.of(r).truth() == Truth.UNKNOWN)
				.map(r -> new HeldOpen(r, lookUps(verdicts.of(r).unknowns()))).toList();
	}

	/** Many rules wait for the same answers, so each is followed to what has to be looked up once. */
	private Set<JobField> lookUps(Set<JobField> unknowns) {
		Set<JobField> all = new LinkedHashSet<>();
		unknowns.forEach(u -> all.addAll(toLookUp.computeIfAbsent(u, job::toLookUp)));
		return all;
	}

	/** A rule whose conditions hold in several ways proposes each different value once. */
	private Map<Setting, List<Proposal>> proposals(List<Firing> firings) {
		Map<Setting, List<Proposal>> proposals = new LinkedHashMap<>();
		int at = 0;
		for (Rule rule : rules) {
			for (Verdict.Way way : verdicts.of(rule).ways()) {
				Firing firing = firings.get(at++);
				for (Action action : rule.then()) {
					if (action instanceof Action.Propose propose) {
						add(new Proposal(propose.setting(), value(propose.value(), way), firing), proposals);
					}
				}
			}
		}
		return proposals;
	}

	private static void add(Proposal proposal, Map<Setting, List<Proposal>> proposals) {
		List<Proposal> made = proposals.computeIfAbsent(proposal.setting(), x -> new ArrayList<>());
		if (made.stream().noneMatch(p -> p.rule() == proposal.rule() && p.value().same(proposal.value()))) {
			made.add(proposal);
		}
	}

	private Value value(Operand operand, Verdict.Way way) {
		return operand instanceof Operand.Literal literal ? literal.value()
				: job.answer(way.values().get(operand)).value().orElseThrow();
	}
}
