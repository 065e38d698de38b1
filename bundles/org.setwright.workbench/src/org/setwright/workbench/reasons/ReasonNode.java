package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.JobField;

/**
 * One line of the answer to "why?".
 *
 * @param sign which sign stands before it
 * @param text the line
 * @param remark what stands after it, quieter; may be empty
 * @param detail everything about it, to be read at leisure below the outline; may have several lines
 * @param place where it can be looked up; empty when nowhere
 * @param children what it rests on
 */
public record ReasonNode(Sign sign, String text, String remark, String detail, Optional<Place> place,
		List<ReasonNode> children) {
	public ReasonNode {
		children = List.copyOf(children);
	}

	/** The sign before a line. */
	public enum Sign {
		SETTLED, DISPUTED, GAP, PERHAPS, RULE, OUTRANKED, HELD_OPEN, CONDITION, FACT, UNKNOWN, FINDING, NOTE, NONE, CALCULATED
	}

	/** Where a line can be looked up. */
	public sealed interface Place {
	}

	/** In a rule file or a table. */
	public record InRules(Position at) implements Place {
	}

	/** In the job. */
	public record InJob(JobField field) implements Place {
	}
}
