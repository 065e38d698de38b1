package org.setwright.engine;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.explaining.Bases;
import org.setwright.engine.explaining.Reasoning;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Condition;
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
import org.setwright.engine.later.Later;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.StartUpCheck;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.engine.settling.Settlement;
import org.setwright.engine.startup.CheckList;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** One run of one job, step by step: try, compare with the rule engine, explain, settle. */
final class Run {
	private final List<Rule> rules;
	private final Map<Setting, List<Condition>> requirements;
	private final JobFacts job;
	private final Bases bases;
	private final Verdicts verdicts;
	/** Of each rule, in rule order. */
	private final Verdict[] verdict;
	private final Map<String, List<Firing>> makers = new HashMap<>();

	/** @param verdicts of all {@code rules} on {@code job} */
	Run(List<Rule> rules, Map<Setting, List<Condition>> requirements, JobFacts job, Verdicts verdicts,
			Catalogue catalogue) {
		this.rules = rules;
		this.requirements = requirements;
		this.job = job;
		this.verdicts = verdicts;
		bases = new Bases(job, catalogue);
		verdict = rules.stream().map(verdicts::of).toArray(Verdict[]::new);
	}

	/** A rule that spoke, and in which way. */
	private record Spoken(Firing firing, Verdict.Way way) {
	}

	/** @param fired the rules that fired in the rule engine, by number */
	Outcome outcome(BitSet fired) {
		compare(fired);
		return outcome();
	}

	/** What the evaluator alone comes to. */
	Outcome outcome() {
		List<Spoken> spoken = spoken();
		List<Firing> firings = spoken.stream().map(Spoken::firing).toList();
		List<HeldOpen> heldOpen = heldOpen();
		Map<Setting, List<HeldOpen>> bySetting = bySetting(heldOpen);
		Map<Setting, List<Proposal>> proposals = proposals(spoken);
		Map<Setting, Set<JobField>> perhaps = new LinkedHashMap<>();
		List<SettingOutcome> settings = new ArrayList<>();
		requirements.forEach((setting, conditions) -> {
			Verdict needed = Trial.of(conditions, job);
			List<Proposal> made = proposals.getOrDefault(setting, List.of());
			Need need = isOptional(setting) ? Need.NOT_NEEDED : need(needed.truth());
			if (need != Need.NOT_NEEDED || !made.isEmpty()) {
				perhaps.put(setting, needed.unknowns());
				settings.add(Settlement.settle(setting, need, made, bySetting.getOrDefault(setting, List.of())));
			}
		});
		List<Finding> findings = makers.entrySet().stream().map(e -> new Finding(e.getKey(), e.getValue()))
				.sorted(Comparator.comparing(Finding::name)).toList();
		return new Outcome(job.job(), settings, firings, heldOpen, findings, Settlement.cautions(firings),
				new Later<>(() -> startUp(spoken, heldOpen, settings)), new Later<>(() -> toFindOut(settings, perhaps, heldOpen)));
	}

	private List<ToFindOut> toFindOut(List<SettingOutcome> settings, Map<Setting, Set<JobField>> perhaps, List<HeldOpen> heldOpen) {
		Map<Setting, Set<JobField>> lookUps = new HashMap<>();
		perhaps.forEach((setting, unknowns) -> lookUps.put(setting, lookUps(unknowns)));
		return Settlement.toFindOut(settings, lookUps, heldOpen);
	}

	private List<StartUpCheck> startUp(List<Spoken> spoken, List<HeldOpen> heldOpen, List<SettingOutcome> settings) {
		CheckList checks = new CheckList(job, settings);
		spoken.forEach(s -> checks.certain(s.firing, s.way));
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
		for (int i = 0; i < verdict.length; i++) {
			if (fired.get(i) != (verdict[i].truth() == Truth.TRUE)) {
				throw new Disagreement(rules.get(i).name());
			}
		}
	}

	/** Every way in which a rule speaks, in rule order. Notes on the way who makes which finding. */
	private List<Spoken> spoken() {
		Reasoning reasoning = new Reasoning(job, bases, verdicts, name -> makers.getOrDefault(name, List.of()));
		List<Spoken> all = new ArrayList<>();
		for (int i = 0; i < verdict.length; i++) {
			Rule rule = rules.get(i);
			for (Verdict.Way way : verdict[i].ways()) {
				Firing firing = reasoning.firing(rule, way);
				all.add(new Spoken(firing, way));
				rule.finds().forEach(f -> makers.computeIfAbsent(f, x -> new ArrayList<>()).add(firing));
			}
		}
		return all;
	}

	private List<HeldOpen> heldOpen() {
		List<HeldOpen> open = new ArrayList<>();
		for (int i = 0; i < verdict.length; i++) {
			if (verdict[i].truth() == Truth.UNKNOWN) {
				Set<JobField> unknowns = verdict[i].unknowns();
				open.add(new HeldOpen(rules.get(i), new Later<>(() -> lookUps(unknowns))));
			}
		}
		return open;
	}

	private Set<JobField> lookUps(Set<JobField> unknowns) {
		Set<JobField> all = new LinkedHashSet<>();
		unknowns.forEach(u -> all.addAll(job.toLookUp(u)));
		return Collections.unmodifiableSet(all);
	}

	/** A rule whose conditions hold in several ways proposes each different value once. */
	private Map<Setting, List<Proposal>> proposals(List<Spoken> spoken) {
		Map<Setting, List<Proposal>> proposals = new LinkedHashMap<>();
		for (Spoken each : spoken) {
			for (Action action : each.firing.rule().then()) {
				if (action instanceof Action.Propose propose) {
					add(new Proposal(propose.setting(), value(propose.value(), each.way), each.firing), proposals);
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
