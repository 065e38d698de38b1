package org.setwright.engine.whynot;

import java.util.List;
import org.setwright.engine.language.Condition;
import org.setwright.engine.outcome.Reason;
import org.setwright.trade.catalogue.JobField;

/**
 * One condition that keeps a rule from speaking.
 *
 * @param condition as written in the rule
 * @param sentence for a trainer to read out: what is, and what the rule wants
 * @param tested the answers that fail, with what the rule wants of each; empty when there is no such fact, or one too many
 * @param looked the places in the job to look at
 * @param makers for a finding nobody made: what became of each rule that could have made it
 */
public record Blocker(Condition condition, String sentence, List<Reason.Tested> tested, List<JobField> looked,
		List<WhyNot> makers) {
	public Blocker {
		tested = List.copyOf(tested);
		looked = List.copyOf(looked);
		makers = List.copyOf(makers);
	}
}
