package org.setwright.engine.logic;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.engine.language.Condition;
import org.setwright.engine.language.Operand;
import org.setwright.trade.catalogue.JobField;

/**
 * What trying conditions on a job gives.
 *
 * @param truth whether they hold in some way
 * @param ways every way in which they certainly hold
 * @param unknowns when it cannot be decided: what keeps it open; else empty
 */
public record Verdict(Truth truth, List<Way> ways, Set<JobField> unknowns) {
	/** Conditions that cannot hold. */
	public static final Verdict FALSE = new Verdict(Truth.FALSE, List.of(), Set.of());

	public Verdict {
		ways = List.copyOf(ways);
		unknowns = Set.copyOf(unknowns);
	}

	/**
	 * One way in which conditions hold.
	 *
	 * @param steps the conditions it went through, in rule order; of those joined by or, the one that held
	 * @param values where the answer stands that each name used by an action stands for
	 */
	public record Way(List<Step> steps, Map<Operand.Bound, JobField> values) {
		public Way {
			steps = List.copyOf(steps);
			values = Map.copyOf(values);
		}
	}

	/** A condition that held. @param item the fact that made a pattern hold; empty for other conditions */
	public record Step(Condition condition, Optional<JobFacts.Item> item) {
	}
}
