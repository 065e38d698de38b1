package org.setwright.engine.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.setwright.engine.language.FindingOrder;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Setting;

/**
 * A stated answer that matters.
 *
 * @param place the answer
 * @param instead the other answer that would change most settings
 * @param changes the settings it would change; not empty
 */
public record Sensitivity(JobField place, Change instead, List<Setting> changes) {
	public Sensitivity {
		changes = List.copyOf(changes);
	}

	/**
	 * Finds which single stated answers, if wrong, would change which settings: the one that changes most first, so that it
	 * is checked first.
	 *
	 * @param run runs a job
	 */
	public static List<Sensitivity> of(Job job, Catalogue catalogue, FindingOrder order, Function<Job, Outcome> run,
			BooleanSupplier cancelled) {
		Outcome before = run.apply(job);
		Map<JobField, Sensitivity> worst = new LinkedHashMap<>();
		for (Change change : new Candidates(new Slice(order.sequence(), order, catalogue), catalogue, job).ofKnownAnswers()) {
			if (cancelled.getAsBoolean()) {
				break;
			}
			List<Setting> changes = Differences.between(before, run.apply(change.apply(job)));
			Sensitivity sofar = worst.get(change.place());
			if (!changes.isEmpty() && (sofar == null || sofar.changes.size() < changes.size())) {
				worst.put(change.place(), new Sensitivity(change.place(), change, changes));
			}
		}
		List<Sensitivity> sorted = new ArrayList<>(worst.values());
		sorted.sort(Comparator.<Sensitivity>comparingInt(s -> -s.changes.size()).thenComparing(s -> s.place.label()));
		return sorted;
	}
}
