package org.setwright.engine.change;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.engine.outcome.Finding;
import org.setwright.engine.outcome.Outcome;
import org.setwright.trade.catalogue.Job;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.UnitSystem;

/**
 * A job on which two books come to different results.
 *
 * @param start the job it was made from
 * @param changes what is different about it; empty when it is {@code start} itself
 * @param before what it comes to under the book
 * @param after what it comes to under the amended book
 * @param settings the settings they differ in; empty when they differ in other things alone
 */
public record Telltale(Job start, List<Change> changes, Job job, Outcome before, Outcome after, List<Setting> settings) {
	public Telltale {
		changes = List.copyOf(changes);
		settings = List.copyOf(settings);
	}

	/**
	 * @param findings whether it is enough that the rules find something else
	 * @return empty when a person reading both results would see no difference in settings, cautions and start-up checks
	 */
	public static Optional<Telltale> of(Job job, Outcome before, Outcome after, boolean findings) {
		List<Setting> settings = Differences.between(before, after);
		return settings.isEmpty() && said(before, findings).equals(said(after, findings)) ? Optional.empty()
				: Optional.of(new Telltale(job, List.of(), job, before, after, settings));
	}

	/** @return the same, made from {@code start} by {@code changes} */
	Telltale madeFrom(Job start, List<Change> changes) {
		return new Telltale(start, changes, job, before, after, settings);
	}

	private static Set<String> said(Outcome outcome, boolean findings) {
		Stream<String> cautions = outcome.cautions().stream().map(c -> c.kind() + " " + c.sentence());
		Stream<String> startUp = outcome.startUp().stream().map(c -> c.phase() + " " + c.certain() + " " + c.callFor().text(UnitSystem.IP));
		Stream<String> found = findings ? outcome.findings().stream().map(Finding::name) : Stream.empty();
		return Stream.of(cautions, startUp, found).flatMap(s -> s).collect(Collectors.toSet());
	}
}
