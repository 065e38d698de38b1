package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/**
 * Looks for the smallest sets of changes that reach a goal: all sets of one change, then of two, and so on, so that what
 * is found first is smallest. A goal that is missed rests on the places of the job that were read to find that out; until
 * one of them changes it stays missed. So only changes at these places are tried, and yet no smallest set is passed over.
 */
final class Search {
	private final Candidates candidates;
	private final Predicate<Change> allowed;
	private final Function<Job, Optional<Set<JobField>>> missed;
	private final Predicate<Job> proof;
	private final Watch watch;
	private final int enough;
	private final List<ChangedJob> found = new ArrayList<>();
	private final Set<Set<JobField>> places = new HashSet<>();
	private boolean ended;

	/**
	 * @param allowed which changes may be made
	 * @param missed empty when a job reaches the goal, else the places of which at least one has to change
	 * @param proof whether a job that reaches the goal really does
	 * @param enough how many sets are enough
	 */
	Search(Candidates candidates, Predicate<Change> allowed, Function<Job, Optional<Set<JobField>>> missed, Predicate<Job> proof,
			int enough, Watch watch) {
		this.candidates = candidates;
		this.allowed = allowed;
		this.missed = missed;
		this.proof = proof;
		this.enough = enough;
		this.watch = watch;
	}

	/** A changed job that misses the goal. @param because the places of which at least one has to change */
	private record Missed(ChangedJob made, Set<JobField> because) {
	}

	/** @return the smallest sets, then some of one change more, at most {@code largest} changes each */
	List<ChangedJob> upTo(Job job, int largest) {
		List<Missed> open = new ArrayList<>();
		missed.apply(job).ifPresent(because -> open.add(new Missed(ChangedJob.unchanged(job), because)));
		int smallest = largest;
		for (int size = 1; size <= Math.min(largest, smallest + 1) && found.size() < enough && !ended; size++) {
			List<Missed> next = further(open, size);
			open.clear();
			open.addAll(next);
			smallest = found.isEmpty() ? smallest : Math.min(smallest, found.get(0).changes().size());
		}
		return found;
	}

	/** @return whether the search was ended before it had tried everything */
	boolean ended() {
		return ended;
	}

	private List<Missed> further(List<Missed> open, int size) {
		List<Missed> next = new ArrayList<>();
		Set<Set<Change>> seen = new HashSet<>();
		for (Missed from : open) {
			for (Change change : candidates.at(from.because, from.made)) {
				if (found.size() >= enough || ended) {
					return next;
				}
				Set<Change> all = new HashSet<>(from.made.changes());
				all.add(change);
				if (allowed.test(change) && seen.add(all)) {
					reach(from.made.with(change)).ifPresent(next::add);
					ended = !watch.goOn(size);
				}
			}
		}
		return next;
	}

	private Optional<Missed> reach(ChangedJob made) {
		Set<JobField> touched = made.touched();
		if (places.stream().anyMatch(touched::containsAll)) {
			return Optional.empty();
		}
		Optional<Set<JobField>> because = missed.apply(made.job());
		if (because.isEmpty() && proof.test(made.job())) {
			places.add(touched);
			found.add(made);
		}
		return because.map(b -> new Missed(made, b));
	}
}
