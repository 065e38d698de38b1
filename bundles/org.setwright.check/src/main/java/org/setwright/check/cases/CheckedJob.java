package org.setwright.check.cases;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setwright.book.JobCase;
import org.setwright.engine.outcome.Outcome;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Setting;

/**
 * A job case and how each of its points stands. Immutable.
 *
 * @param outcome what the job came to; empty when it could not be run
 * @param fault why it could not be run, a sentence; empty when it was
 * @param points the settings that something is expected of and then all else that is, in file order; then all other settings of the job
 */
public record CheckedJob(JobCase job, Optional<Outcome> outcome, String fault, List<Point> points) {
	public CheckedJob {
		points = List.copyOf(points);
	}

	/** @return {@code job} held against what it came to */
	public static CheckedJob of(JobCase job, Outcome outcome) {
		Stream<Point> asked = job.expected().keySet().stream().map(s -> of(job, s, outcome.setting(s)));
		ItemsThere there = new ItemsThere(job, outcome);
		Stream<Point> items = job.items().stream().map(there::point);
		Stream<Point> notAsked = outcome.settings().stream().filter(s -> !job.expected().containsKey(s.setting()))
				.map(s -> of(job, s.setting(), Optional.of(s)));
		return new CheckedJob(job, Optional.of(outcome), "", Stream.of(asked, items, notAsked).flatMap(p -> p).toList());
	}

	/** @return how one setting of {@code job} stands; {@code outcome} is empty when the job neither needs nor gets it */
	public static SettingPoint of(JobCase job, Setting setting, Optional<SettingOutcome> outcome) {
		return new SettingPoint(job.path(), setting, Optional.ofNullable(job.expected().get(setting)), outcome);
	}

	/** @return {@code job}, which could not be run because of {@code fault} */
	public static CheckedJob notRun(JobCase job, String fault) {
		return new CheckedJob(job, Optional.empty(), fault, List.of());
	}

	/** @return the points something is expected of, settings first */
	public List<Point> asked() {
		return points.stream().filter(p -> p.standing() != Standing.NOT_ASKED).toList();
	}

	/** @return the points that are not met, in file order */
	public List<Point> notMet() {
		return points.stream().filter(p -> p.standing() == Standing.NOT_MET).toList();
	}

	/** @return how many points stand so */
	public long count(Standing standing) {
		return points.stream().filter(p -> p.standing() == standing).count();
	}

	/** @return whether it ran and every point is met */
	public boolean allMet() {
		return outcome.isPresent() && notMet().isEmpty();
	}
}
