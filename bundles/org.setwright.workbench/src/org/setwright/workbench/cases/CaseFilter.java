package org.setwright.workbench.cases;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.setwright.check.cases.CheckedJob;
import org.setwright.check.cases.Standing;
import org.setwright.workbench.rows.SearchWords;

/**
 * What of a check is shown.
 *
 * @param standings the points shown
 * @param search words that all must occur in a point or its job
 * @param only the points shown at most, by their keys; empty for no such limit
 */
record CaseFilter(Set<Standing> standings, String search, Optional<Set<String>> only) {
	/** What is not asked would bury the rest. */
	static final CaseFilter AT_FIRST = new CaseFilter(EnumSet.of(Standing.MET, Standing.NOT_MET), ""); //$NON-NLS-1$

	CaseFilter {
		standings = Set.copyOf(standings);
		only = only.map(Set::copyOf);
	}

	/** Whatever its key. */
	CaseFilter(Set<Standing> standings, String search) {
		this(standings, search, Optional.empty());
	}

	CaseFilter with(Standing standing, boolean shown) {
		Set<Standing> changed = EnumSet.noneOf(Standing.class);
		changed.addAll(standings);
		if (shown) {
			changed.add(standing);
		} else {
			changed.remove(standing);
		}
		return new CaseFilter(changed, search, only);
	}

	CaseFilter searching(String words) {
		return new CaseFilter(standings, words, only);
	}

	CaseFilter limitedTo(Optional<Set<String>> keys) {
		return new CaseFilter(standings, search, keys);
	}

	/** @return the points of {@code job} that are shown, those not met first */
	List<CaseLine.OfPoint> points(CheckedJob job) {
		return job.points().stream().filter(p -> standings.contains(p.standing())).map(p -> new CaseLine.OfPoint(job, p))
				.filter(line -> only.isEmpty() || only.get().contains(line.key())).filter(line -> SearchWords.allIn(search, line.searched())).sorted(Comparator.comparing(line -> line.point().standing() != Standing.NOT_MET)).toList();
	}

	/** @return the jobs that are shown: those with a point to show, and those that did not run */
	List<CaseLine.OfJob> jobs(List<CheckedJob> jobs) {
		return jobs.stream().filter(j -> j.outcome().isEmpty() ? SearchWords.allIn(search, j.job().name().toLowerCase(Locale.ROOT)) : !points(j).isEmpty())
				.map(CaseLine.OfJob::new).toList();
	}
}
