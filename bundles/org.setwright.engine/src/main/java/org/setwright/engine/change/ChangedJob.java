package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;

/**
 * A job with some changes made. Immutable.
 *
 * @param original as it was; places of changes are places in it
 * @param changes in an order in which they can be made
 * @param job as it is with them
 */
record ChangedJob(Job original, List<Change> changes, Job job) {

	/** @return {@code job} with nothing changed yet */
	static ChangedJob unchanged(Job job) {
		return new ChangedJob(job, List.of(), job);
	}

	/** @return this with one change more, which it {@link #allows} */
	ChangedJob with(Change change) {
		List<Change> more = new ArrayList<>(changes);
		more.add(change);
		return new ChangedJob(original, List.copyOf(more), made(more));
	}

	/** Facts go last, from the end of their list, so that the places of all other changes stay what they are. */
	private Job made(List<Change> all) {
		Job changed = original;
		List<Change> inOrder = new ArrayList<>(all.stream().filter(c -> !(c instanceof Change.Removed)).toList());
		all.stream().filter(Change.Removed.class::isInstance).sorted(Comparator.comparingInt(c -> -c.place().item())).forEach(inOrder::add);
		for (Change change : inOrder) {
			changed = change.apply(changed);
		}
		return changed;
	}

	/** @return where what stands at {@code place} of the changed job stood in the original */
	JobField before(JobField place) {
		int item = place.item();
		for (int removed : changes.stream().filter(c -> c instanceof Change.Removed && c.place().kind() == place.kind())
				.map(c -> c.place().item()).sorted().toList()) {
			item += removed <= item ? 1 : 0;
		}
		return new JobField(place.kind(), item, place.field());
	}

	/** @return whether {@code next} goes together with what is changed: a place changes once, a kind gains or loses facts */
	boolean allows(Change next) {
		return changes.stream().noneMatch(c -> c.place().equals(next.place()) || contradicts(c, next) || contradicts(next, c))
				&& leavesOne(next);
	}

	private static boolean contradicts(Change one, Change other) {
		FactKind kind = one.place().kind();
		return one instanceof Change.Removed && kind == other.place().kind() && (other instanceof Change.Added
				|| other instanceof Change.Answered && other.place().item() == one.place().item());
	}

	private boolean leavesOne(Change next) {
		return !(next instanceof Change.Removed) || !next.place().kind().always() || job.entry(next.place().kind()).facts().size() > 1;
	}

	/** @return the places changed */
	Set<JobField> touched() {
		return changes.stream().map(Change::place).collect(Collectors.toSet());
	}
}
