package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/**
 * Looks for the smallest sets of changes that reach a goal: all sets of one change, then of two, and so on, so that what
 * is found first is smallest.
 */
final class Search {
	private final List<Change> candidates;
	private final Job job;
	private final Predicate<Job> goal;
	private final BooleanSupplier cancelled;
	private final int most;
	private final List<List<Change>> found = new ArrayList<>();
	private final Set<Set<JobField>> places = new HashSet<>();

	/** @param most how many alternatives are enough */
	Search(List<Change> candidates, Job job, Predicate<Job> goal, int most, BooleanSupplier cancelled) {
		this.candidates = candidates;
		this.job = job;
		this.goal = goal;
		this.most = most;
		this.cancelled = cancelled;
	}

	/** @return the smallest sets, then some of one change more, at most {@code largest} changes each */
	List<List<Change>> upTo(int largest) {
		int smallest = largest;
		for (int size = 1; size <= Math.min(largest, smallest + 1) && found.size() < most; size++) {
			choose(size, 0, job, new ArrayList<>());
			if (!found.isEmpty()) {
				smallest = Math.min(smallest, found.get(0).size());
			}
		}
		return found;
	}

	private void choose(int left, int from, Job sofar, List<Change> chosen) {
		if (cancelled.getAsBoolean() || found.size() >= most) {
			return;
		} else if (left == 0) {
			reached(sofar, chosen);
			return;
		}
		for (int i = from; i < candidates.size(); i++) {
			Change next = candidates.get(i);
			if (applies(next, sofar, chosen)) {
				chosen.add(next);
				choose(left - 1, i + 1, next.apply(sofar), chosen);
				chosen.remove(chosen.size() - 1);
			}
		}
	}

	private void reached(Job changed, List<Change> chosen) {
		Set<JobField> touched = new LinkedHashSet<>();
		chosen.forEach(c -> touched.add(c.place()));
		boolean holdsSmaller = places.stream().anyMatch(touched::containsAll);
		if (!holdsSmaller && goal.test(changed)) {
			places.add(touched);
			found.add(List.copyOf(chosen));
		}
	}

	/** A place changes once, an answer needs its fact, and what is removed has no answers. */
	private static boolean applies(Change next, Job sofar, List<Change> chosen) {
		boolean taken = chosen.stream().anyMatch(c -> c.place().equals(next.place())
				|| (c instanceof Change.Removed || next instanceof Change.Removed) && c.place().kind() == next.place().kind());
		int facts = sofar.entry(next.place().kind()).facts().size();
		boolean there = !(next instanceof Change.Answered) || next.place().item() < facts || next.place().kind().exactlyOne();
		return !taken && there;
	}
}
