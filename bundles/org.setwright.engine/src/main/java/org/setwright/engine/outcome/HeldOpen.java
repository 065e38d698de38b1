package org.setwright.engine.outcome;

import java.util.Set;
import org.setwright.engine.language.Rule;
import org.setwright.engine.later.Later;
import org.setwright.trade.catalogue.JobField;

/** A rule that can neither speak nor be ruled out. @param unknowns what {@link #by} comes to once it is asked for */
public record HeldOpen(Rule rule, Later<Set<JobField>> unknowns) {
	/** @return the unknowns that hold it open; not empty */
	public Set<JobField> by() {
		return unknowns.get();
	}
}
