package org.setwright.engine.settling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Firing;
import org.setwright.engine.outcome.HeldOpen;
import org.setwright.engine.outcome.Proposal;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.engine.outcome.SettingOutcome.Need;
import org.setwright.engine.outcome.SettingOutcome.State;
import org.setwright.engine.outcome.ToFindOut;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/** Settles proposals by authority. Pure functions; no order of rules matters. */
public final class Settlement {
	private Settlement() {
	}

	/**
	 * Settles one setting.
	 *
	 * @param proposals all proposals for it
	 * @param heldOpen all rules held open that would propose it
	 */
	public static SettingOutcome settle(Setting setting, Need need, List<Proposal> proposals, List<HeldOpen> heldOpen) {
		List<Proposal> ranked = proposals.stream().sorted(Comparator.comparing(Proposal::authority).reversed()).toList();
		List<HeldOpen> threats = heldOpen.stream().filter(h -> ranked.isEmpty() || couldChange(h.rule(), setting, ranked))
				.toList();
		return new SettingOutcome(setting, state(need, ranked), need, ranked, threats);
	}

	private static State state(Need need, List<Proposal> ranked) {
		if (ranked.isEmpty()) {
			return need == Need.NEEDED ? State.GAP : State.PERHAPS;
		}
		Proposal first = ranked.get(0);
		boolean agreed = ranked.stream().filter(p -> p.authority() == first.authority())
				.allMatch(p -> p.value().same(first.value()));
		return agreed ? State.SETTLED : State.DISPUTED;
	}

	/** @return whether {@code rule}, should it speak, could change what the ranked proposals come to */
	private static boolean couldChange(Rule rule, Setting setting, List<Proposal> ranked) {
		Proposal first = ranked.get(0);
		if (first.authority().outranks(rule.authority())) {
			return false;
		}
		return rule.authority().outranks(first.authority()) && state(Need.NEEDED, ranked) == State.DISPUTED
				|| rule.proposals(setting).stream()
						.anyMatch(p -> !(p.value() instanceof Operand.Literal literal
								&& literal.value().same(first.value())));
	}

	/** @return the cautions of all firings, each sentence once, most serious first */
	public static List<Caution> cautions(List<Firing> firings) {
		record Said(CautionKind kind, String sentence) {
		}
		Map<Said, List<Firing>> by = new LinkedHashMap<>();
		for (Firing firing : firings) {
			for (Action action : firing.rule().then()) {
				if (action instanceof Action.Warn warn) {
					by.computeIfAbsent(new Said(warn.kind(), warn.sentence()), x -> new ArrayList<>()).add(firing);
				}
			}
		}
		return by.entrySet().stream().map(e -> new Caution(e.getKey().kind(), e.getKey().sentence(), e.getValue()))
				.sorted(Comparator.comparing(Caution::kind)).toList();
	}

	/**
	 * @param perhaps for each setting of which it is not known whether it is needed: the unknowns that keep it open
	 * @param heldOpen every rule held open
	 * @return what to find out next: the unknown that holds most settings open first, then by serious cautions, then by
	 *         name
	 */
	public static List<ToFindOut> toFindOut(List<SettingOutcome> settings, Map<Setting, Set<JobField>> perhaps,
			List<HeldOpen> heldOpen) {
		Map<JobField, Set<Setting>> open = new LinkedHashMap<>();
		for (SettingOutcome outcome : settings) {
			Set<JobField> unknowns = new LinkedHashSet<>(
					outcome.state() == State.PERHAPS ? perhaps.getOrDefault(outcome.setting(), Set.of()) : Set.of());
			outcome.heldOpen().forEach(h -> unknowns.addAll(h.by()));
			unknowns.forEach(u -> open.computeIfAbsent(u, x -> new LinkedHashSet<>()).add(outcome.setting()));
		}
		Map<JobField, List<Rule>> warnings = new LinkedHashMap<>();
		heldOpen.stream().filter(h -> warnsSeriously(h.rule())).forEach(
				h -> h.by().forEach(u -> warnings.computeIfAbsent(u, x -> new ArrayList<>()).add(h.rule())));
		Set<JobField> all = new LinkedHashSet<>(open.keySet());
		all.addAll(warnings.keySet());
		return all.stream()
				.map(u -> new ToFindOut(u, List.copyOf(open.getOrDefault(u, Set.of())), warnings.getOrDefault(u, List.of())))
				.sorted(Comparator.<ToFindOut>comparingInt(t -> -t.holdsOpen().size())
						.thenComparingInt(t -> -t.couldWarn().size()).thenComparing(t -> t.unknown().label()))
				.toList();
	}

	private static boolean warnsSeriously(Rule rule) {
		return rule.then().stream().anyMatch(a -> a instanceof Action.Warn warn
				&& warn.kind().compareTo(CautionKind.LICENSED_WORK) <= 0);
	}
}
