package org.setwright.check.coverage;

import java.util.List;
import org.setwright.engine.language.Rule;

/**
 * What the saved jobs make of one rule.
 *
 * @param decided the jobs on which it spoke, and decided a setting, raised a caution or made a finding
 * @param outranked the jobs on which it spoke, and stronger rules decided everything it proposed
 * @param silent on how many jobs its conditions certainly failed
 * @param heldOpen the jobs on which unknown answers left it open
 * @param conditions how each of its conditions came out, in rule order
 */
public record RuleCoverage(Rule rule, List<String> decided, List<String> outranked, int silent, List<String> heldOpen,
		List<ConditionCoverage> conditions) {
	public RuleCoverage {
		decided = List.copyOf(decided);
		outranked = List.copyOf(outranked);
		heldOpen = List.copyOf(heldOpen);
		conditions = List.copyOf(conditions);
	}

	/** @return on how many jobs it spoke */
	public int spoke() {
		return decided.size() + outranked.size();
	}
}
