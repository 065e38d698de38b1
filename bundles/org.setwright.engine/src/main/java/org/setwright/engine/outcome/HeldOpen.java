package org.setwright.engine.outcome;

import java.util.Set;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.JobField;

/** A rule that can neither speak nor be ruled out. @param by the unknowns that hold it open; not empty */
public record HeldOpen(Rule rule, Set<JobField> by) {
	public HeldOpen {
		by = Set.copyOf(by);
	}
}
