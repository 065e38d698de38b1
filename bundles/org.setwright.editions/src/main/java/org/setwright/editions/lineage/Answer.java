package org.setwright.editions.lineage;

import java.util.List;
import java.util.Optional;
import org.setwright.editions.compare.RuleChange;
import org.setwright.editions.written.WrittenRule;

/**
 * Who answers for a rule or row. Immutable.
 *
 * @param rule as it is in hand
 * @param inHand what was done to it since the last edition; empty when nothing was
 * @param steps the editions that made or changed it, newest first; empty when it was never kept
 */
public record Answer(WrittenRule rule, Optional<RuleChange> inHand, List<RuleStep> steps) {
	public Answer {
		steps = List.copyOf(steps);
	}

	/** @return who last changed what jobs come to by it, or made it; empty when it was never kept */
	public Optional<RuleStep> mattered() {
		return steps.stream().filter(s -> s.change().matters()).findFirst();
	}

	/** @return the last change of any kind */
	public Optional<RuleStep> last() {
		return steps.stream().findFirst();
	}
}
