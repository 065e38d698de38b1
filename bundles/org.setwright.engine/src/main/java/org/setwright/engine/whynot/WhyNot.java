package org.setwright.engine.whynot;

import java.util.List;
import java.util.Set;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Proposal;
import org.setwright.trade.catalogue.JobField;

/**
 * What became of one rule on one job.
 *
 * @param blockers when silent or held open: everything that keeps it from speaking, in rule order
 * @param heldBy when held open: what to look up
 * @param outrankedBy when outranked: the proposals that decided instead
 */
public record WhyNot(Rule rule, Status status, List<Blocker> blockers, Set<JobField> heldBy,
		List<Proposal> outrankedBy) {
	public WhyNot {
		blockers = List.copyOf(blockers);
		heldBy = Set.copyOf(heldBy);
		outrankedBy = List.copyOf(outrankedBy);
	}

	/** What became of the rule. */
	public enum Status {
		/** It spoke, and nothing it proposes is outranked altogether. */
		FIRED("spoke"),
		/** It spoke, and everything it proposes was outranked. */
		OUTRANKED("outranked"),
		/** Its conditions certainly do not hold. */
		SILENT("silent"),
		/** Unknown answers leave it open whether its conditions hold. */
		HELD_OPEN("held open");

		private final String words;

		Status(String words) {
			this.words = words;
		}

		/** @return for people */
		public String words() {
			return words;
		}
	}
}
