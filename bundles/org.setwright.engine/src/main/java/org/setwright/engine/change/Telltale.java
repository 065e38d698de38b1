package org.setwright.engine.change;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.engine.outcome.Caution;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;

/**
 * A job on which two books come to different results.
 *
 * @param start the job it was made from
 * @param changes what is different about it; empty when it is {@code start} itself
 * @param before what it comes to under the book
 * @param after what it comes to under the amended book
 * @param settings the settings they differ in; empty when they differ in cautions alone
 */
public record Telltale(Job start, List<Change> changes, Job job, Outcome before, Outcome after, List<Setting> settings) {
	public Telltale {
		changes = List.copyOf(changes);
		settings = List.copyOf(settings);
	}

	/** @return empty when a person reading both results would see no difference in settings and cautions */
	public static Optional<Telltale> of(Job job, Outcome before, Outcome after) {
		List<Setting> settings = Differences.between(before, after);
		return settings.isEmpty() && said(before).equals(said(after)) ? Optional.empty()
				: Optional.of(new Telltale(job, List.of(), job, before, after, settings));
	}

	/** @return the same, made from {@code start} by {@code changes} */
	Telltale madeFrom(Job start, List<Change> changes) {
		return new Telltale(start, changes, job, before, after, settings);
	}

	private static Set<String> said(Outcome outcome) {
		return outcome.cautions().stream().map((Caution c) -> c.kind() + " " + c.sentence()).collect(Collectors.toSet());
	}
}
