package org.setwright.engine.outcome;

import java.util.List;

/** Something concluded on the way. @param name its word in rules @param madeBy the firings that made it */
public record Finding(String name, List<Firing> madeBy) {
	public Finding {
		madeBy = List.copyOf(madeBy);
	}

	/** @return for people: DUAL_FUEL_JOB reads "dual fuel job" */
	public String label() {
		return name.toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
	}
}
