package org.setwright.workbench.contents;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.eclipse.osgi.util.NLS;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;

/**
 * On how many saved jobs each rule speaks. Immutable.
 *
 * @param speaks how many jobs, by the rule's name; a rule not in it is silent on all
 */
record RuleUse(Map<String, Integer> speaks) {
	RuleUse {
		speaks = Map.copyOf(speaks);
	}

	static RuleUse of(Collection<Outcome> outcomes) {
		Map<String, Integer> speaks = new HashMap<>();
		for (Outcome outcome : outcomes) {
			Set<String> spoken = new HashSet<>();
			outcome.firings().forEach(f -> spoken.add(f.rule().name()));
			spoken.forEach(name -> speaks.merge(name, 1, Integer::sum));
		}
		return new RuleUse(speaks);
	}

	/** @return on how many jobs {@code rule} speaks, in words */
	String words(Rule rule) {
		int jobs = speaks.getOrDefault(rule.name(), 0);
		return switch (jobs) {
			case 0 -> Messages.RuleUse_silent;
			case 1 -> Messages.RuleUse_oneJob;
			default -> NLS.bind(Messages.RuleUse_jobs, jobs);
		};
	}
}
