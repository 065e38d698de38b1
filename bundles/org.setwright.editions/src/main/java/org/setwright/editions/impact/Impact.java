package org.setwright.editions.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.setwright.book.JobCase;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettings;
import org.setwright.check.Progress;
import org.setwright.editions.compare.BookChanges;
import org.setwright.editions.impact.Telling.Point;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.reading.BookAt;
import org.setwright.editions.reading.Shelf;
import org.setwright.engine.Compilation;
import org.setwright.engine.Disagreement;
import org.setwright.engine.Edition;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.language.Rule;
import org.setwright.trade.catalogue.Job;

/**
 * What the changes between two books mean for the saved jobs. Immutable.
 *
 * @param fault why the jobs could not be run, a sentence; empty when they were
 * @param jobs those with a difference or a fault, in the order of their files
 * @param run how many jobs were run
 */
public record Impact(BookChanges changes, String fault, List<JobImpact> jobs, int run) {
	private static final String FIRST = "No edition stands before it, so there is nothing that jobs came to before.";

	public Impact {
		jobs = List.copyOf(jobs);
	}

	/**
	 * Runs every job under both books, and looks for what is responsible for each difference.
	 *
	 * @param progress told after every job; asked before every job
	 * @return empty when cancelled
	 */
	public static Optional<Impact> of(Shelf shelf, BookChanges changes, Progress progress) throws NotDone {
		if (changes.before().isNothing()) {
			return Optional.of(new Impact(changes, FIRST, List.of(), 0));
		}
		Compilation before = shelf.compiled(changes.before());
		Compilation after = shelf.compiled(changes.after());
		if (before.edition().isEmpty() || after.edition().isEmpty()) {
			BookAt faulty = before.edition().isEmpty() ? changes.before() : changes.after();
			Problem first = (before.edition().isEmpty() ? before : after).problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR)
					.min(Comparator.comparing(p -> !p.at().file().equals(ShopSettings.FILE))).orElseThrow();
			return Optional.of(new Impact(changes, "No job could be run, because " + faulty.shown() + " has errors: " + first, List.of(), 0));
		}
		Edition was = before.edition().get();
		Edition is = after.edition().get();
		Mixes mixes = new Mixes(was.rules(), is.rules(), changes.thatMatter());
		return new Running(was, is, changes, mixes, SettingsBlame.of(shelf, changes, is.rules())).jobs(pairs(shelf, changes), progress);
	}

	private record Both(Optional<JobCase> before, Optional<JobCase> after) {
	}

	private static List<Both> pairs(Shelf shelf, BookChanges changes) throws NotDone {
		Map<String, JobCase> old = new HashMap<>();
		Set<String> names = new LinkedHashSet<>();
		for (String path : changes.before().in("jobs").keySet()) {
			JobCase job = shelf.job(changes.before(), path).job();
			old.put(job.name(), job);
			names.add(job.name());
		}
		List<Both> pairs = new ArrayList<>();
		Map<String, String> renamed = new HashMap<>();
		changes.jobs().stream().filter(j -> j.before().isPresent() && j.after().isPresent())
				.forEach(j -> renamed.put(j.after().get().job().name(), j.before().get().job().name()));
		for (String path : changes.after().in("jobs").keySet()) {
			JobCase job = shelf.job(changes.after(), path).job();
			String was = renamed.getOrDefault(job.name(), job.name());
			pairs.add(new Both(Optional.ofNullable(names.remove(was) ? old.get(was) : null), Optional.of(job)));
		}
		names.forEach(name -> pairs.add(new Both(Optional.of(old.get(name)), Optional.empty())));
		return pairs;
	}

	/** The jobs being run. */
	private record Running(Edition before, Edition after, BookChanges changes, Mixes mixes, SettingsBlame settings) {

		Optional<Impact> jobs(List<Both> pairs, Progress progress) {
			List<JobImpact> found = new ArrayList<>();
			progress.done(0, pairs.size());
			for (int i = 0; i < pairs.size(); i++) {
				if (progress.cancelled()) {
					return Optional.empty();
				}
				JobImpact one = job(pairs.get(i));
				if (!one.differences().isEmpty() || !one.fault().isEmpty()) {
					found.add(one);
				}
				progress.done(i + 1, pairs.size());
			}
			return Optional.of(new Impact(changes, "", found, pairs.size()));
		}

		private JobImpact job(Both pair) {
			JobCase shown = pair.after().or(pair::before).orElseThrow();
			JobImpact.Standing standing = pair.before().isEmpty() ? JobImpact.Standing.ADDED
					: pair.after().isEmpty() ? JobImpact.Standing.REMOVED : JobImpact.Standing.KEPT;
			Job was = pair.before().orElse(shown).job();
			Job is = pair.after().orElse(shown).job();
			try {
				Map<Point, String> old = Telling.of(before.run(was));
				Map<Point, String> now = Telling.of(after.run(is));
				return new JobImpact(shown, standing, differences(was, is, old, now), "");
			} catch (Disagreement none) {
				return new JobImpact(shown, standing, List.of(), none.getMessage());
			}
		}

		private List<Difference> differences(Job was, Job is, Map<Point, String> old, Map<Point, String> now) {
			Set<Point> all = new LinkedHashSet<>(now.keySet());
			all.addAll(old.keySet());
			List<Difference> found = new ArrayList<>();
			Blame blame = null;
			SettingsBlame.OfJob ofSettings = null;
			for (Point point : all.stream().sorted(java.util.Comparator.comparing(Point::kind)).toList()) {
				String had = old.getOrDefault(point, Telling.missing(point));
				String has = now.getOrDefault(point, Telling.missing(point));
				if (!had.equals(has)) {
					blame = blame != null ? blame
							: new Blame(mixes, before.rehearse(was), was.equals(is) ? Optional.empty() : Optional.of(before.rehearse(is)));
					List<Cause> causes = blame.causes(point, has);
					ofSettings = ofSettings != null || !causes.isEmpty() ? ofSettings : settings.of(was, is);
					found.add(new Difference(point, had, has, causes.isEmpty() ? ofSettings.causes(point, has) : causes));
				}
			}
			return found;
		}
	}

	/** Lets the search for the edition that changed a value look for the responsible change. */
	public static List<Cause> causes(Shelf shelf, BookChanges changes, List<Rule> before, List<Rule> after, Job asked, Rehearsal job, Point point,
			String value) throws NotDone {
		List<Cause> causes = new Blame(new Mixes(before, after, changes.thatMatter()), job, Optional.empty()).causes(point, value);
		return causes.isEmpty() ? SettingsBlame.of(shelf, changes, after).of(asked, asked).causes(point, value) : causes;
	}
}
