package org.setwright.writing.live;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.setwright.engine.Standing;

/**
 * What becomes of one rule on the saved jobs.
 *
 * @param jobs the paths of the jobs by what becomes of the rule on them, in the order of the book
 * @param stale whether the rule cannot be read as it stands now, so that these are the counts of how it last could
 */
public record RuleTally(Map<Standing, List<String>> jobs, boolean stale) {
	public RuleTally {
		Map<Standing, List<String>> all = new EnumMap<>(Standing.class);
		for (Standing standing : Standing.values()) {
			all.put(standing, List.copyOf(jobs.getOrDefault(standing, List.of())));
		}
		jobs = java.util.Collections.unmodifiableMap(all);
	}

	/** @return on how many jobs this becomes of it */
	public int count(Standing standing) {
		return jobs.get(standing).size();
	}

	/** @return on how many jobs it speaks */
	public int speaks() {
		return count(Standing.STANDS) + count(Standing.OUTRANKED) + count(Standing.DISPUTED);
	}
}
