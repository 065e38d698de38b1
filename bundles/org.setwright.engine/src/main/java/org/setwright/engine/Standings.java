package org.setwright.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
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
	private final BitSet open;
	private final Standing[] standings;

	/** A value proposed. @param by the rule's number @param value plain, so that equal quantities in other units are equal */
	private record Proposed(int by, Authority authority, Object value) {
	}

	private Standings(List<Rule> rules, JobFacts job, Verdicts verdicts, BitSet open) {
		this.rules = rules;
		this.job = job;
		this.verdicts = verdicts;
		this.open = open;
		standings = new Standing[rules.size()];
	}

	/** @return by number of the rule */
	static List<Standing> of(List<Rule> rules, JobFacts job, Verdicts verdicts) {
		BitSet all = new BitSet();
		all.set(0, rules.size());
		return new Standings(rules, job, verdicts, all).settled(all);
	}

	/** @param before by number of the rule in the book before the amendment @param after of all rules of the amended book */
	static List<Standing> of(Amendment amendment, List<Standing> before, JobFacts job, Verdicts after) {
		Reach reach = amendment.reach();
		Standings amended = new Standings(amendment.rules(), job, after, reach.open());
		for (int i = 0; i < amended.standings.length; i++) {
			amended.standings[i] = reach.was()[i] < 0 ? Standing.SILENT : before.get(reach.was()[i]);
		}
		return amended.settled(reach.looked());
	}

	private List<Standing> settled(BitSet looked) {
		for (int i = looked.nextSetBit(0); i >= 0; i = looked.nextSetBit(i + 1)) {
			Verdict verdict = verdicts.of(rules.get(i));
			stand(i, switch (verdict.truth()) {
				case TRUE -> Standing.STANDS;
				case UNKNOWN -> Standing.HELD_OPEN;
				case FALSE -> Standing.SILENT;
			});
			for (Verdict.Way way : verdict.ways()) {
				propose(i, way);
			}
		}
		proposed.values().forEach(this::settle);
		return Collections.unmodifiableList(Arrays.asList(standings));
	}

	private void stand(int number, Standing standing) {
		if (open.get(number)) {
			standings[number] = standing;
		}
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
				stand(each.by, Standing.DISPUTED);
			} else if (each.authority != strongest && (disputed || !each.value.equals(value)) && standings[each.by] != Standing.DISPUTED) {
				stand(each.by, Standing.OUTRANKED);
			}
		}
	}
}
