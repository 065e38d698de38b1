package org.setwright.engine.logic;

import java.util.List;
import java.util.Map;
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
	 * @param choices for each pattern outside not and exists, the fact that made it hold, in rule order
	 * @param values where the answer stands that each name used by an action stands for
	 */
	public record Way(List<Choice> choices, Map<Operand.Bound, JobField> values) {
		public Way {
			choices = List.copyOf(choices);
			values = Map.copyOf(values);
		}
	}

	/** The fact that made a pattern hold. */
	public record Choice(Condition.Pattern pattern, JobFacts.Item item) {
	}
}
