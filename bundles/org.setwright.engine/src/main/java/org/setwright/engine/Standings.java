package org.setwright.engine;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Operand;
import org.setwright.engine.language.Rule;
import org.setwright.engine.logic.JobFacts;
import org.setwright.engine.logic.Verdict;
import org.setwright.engine.logic.Verdicts;
import org.setwright.trade.catalogue.Authority;
import org.setwright.trade.catalogue.Setting;

/** Works out what has become of every rule on a job, without the reasons, which cost most. */
final class Standings {
	private final List<Rule> rules;
	private final JobFacts job;
	private final Verdicts verdicts;
	private final Map<Setting, List<Proposed>> proposed = new IdentityHashMap<>();
	private final Standing[] standings;

	/** A value proposed. @param by the rule's number @param value plain, so that equal quantities in other units are equal */
	private record Proposed(int by, Authority authority, Object value) {
	}

	private Standings(List<Rule> rules, JobFacts job, Verdicts verdicts) {
		this.rules = rules;
		this.job = job;
		this.verdicts = verdicts;
		standings = new Standing[rules.size()];
	}

	/** @return by number of the rule */
	static List<Standing> of(List<Rule> rules, JobFacts job, Verdicts verdicts) {
		return new Standings(rules, job, verdicts).all();
	}

	private List<Standing> all() {
		for (int i = 0; i < standings.length; i++) {
			Verdict verdict = verdicts.of(rules.get(i));
			standings[i] = switch (verdict.truth()) {
				case TRUE -> Standing.STANDS;
				case UNKNOWN -> Standing.HELD_OPEN;
				case FALSE -> Standing.SILENT;
			};
			for (Verdict.Way way : verdict.ways()) {
				propose(i, way);
			}
		}
		proposed.values().forEach(this::settle);
		return List.of(standings);
	}

	private void propose(int number, Verdict.Way way) {
		Rule rule = rules.get(number);
		for (Action action : rule.then()) {
			if (action instanceof Action.Propose propose) {
				Object value = propose.value() instanceof Operand.Literal literal ? literal.value().plain()
						: job.answer(way.values().get(propose.value())).value().orElseThrow().plain();
				proposed.computeIfAbsent(propose.setting(), s -> new ArrayList<>()).add(new Proposed(number, rule.authority(), value));
			}
		}
	}

	private void settle(List<Proposed> all) {
		Authority strongest = all.get(0).authority;
		for (Proposed each : all) {
			strongest = each.authority.outranks(strongest) ? each.authority : strongest;
		}
		Object value = null;
		boolean disputed = false;
		for (Proposed each : all) {
			if (each.authority == strongest) {
				disputed |= value != null && !value.equals(each.value);
				value = each.value;
			}
		}
		for (Proposed each : all) {
			if (each.authority == strongest && disputed) {
				standings[each.by] = Standing.DISPUTED;
			} else if (each.authority != strongest && (disputed || !each.value.equals(value)) && standings[each.by] != Standing.DISPUTED) {
				standings[each.by] = Standing.OUTRANKED;
			}
		}
	}
}
