package org.setwright.check.cases;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.engine.Disagreement;
import org.setwright.engine.Edition;

/** Job cases run against what they expect. Immutable. @param jobs in the order they were given */
public record CaseCheck(List<CheckedJob> jobs) {
	public CaseCheck {
		jobs = List.copyOf(jobs);
	}

	/**
	 * Runs {@code jobs} under {@code edition}. A job on which the rule engine and the evaluator differ is not run, and says so.
	 *
	 * @param progress told after every job; asked before every job
	 * @param parallel whether to use every processor
	 * @return empty when cancelled
	 */
	public static Optional<CaseCheck> of(Edition edition, List<JobCase> jobs, Progress progress, boolean parallel) {
		return of(edition, jobs, progress, parallel, new RunTimes());
	}

	/** The same. @param times told how long every job took */
	public static Optional<CaseCheck> of(Edition edition, List<JobCase> jobs, Progress progress, boolean parallel, RunTimes times) {
		AtomicInteger done = new AtomicInteger();
		progress.done(0, jobs.size());
		Stream<JobCase> running = parallel ? jobs.parallelStream() : jobs.stream();
		List<CheckedJob> checked = running.filter(j -> !progress.cancelled()).map(job -> {
			CheckedJob one = times.measured(job, () -> run(edition, job));
			progress.done(done.incrementAndGet(), jobs.size());
			return one;
		}).toList();
		return checked.size() < jobs.size() || progress.cancelled() ? Optional.empty() : Optional.of(new CaseCheck(checked));
	}

	private static CheckedJob run(Edition edition, JobCase job) {
		try {
			return CheckedJob.of(job, edition.run(job.job()));
		} catch (Disagreement none) {
			return CheckedJob.notRun(job, none.getMessage());
		}
	}

	/** @return how many points of all jobs stand so */
	public long count(Standing standing) {
		return jobs.stream().mapToLong(j -> j.count(standing)).sum();
	}

	/** @return whether every job ran and every point of it is met */
	public boolean allMet() {
		return jobs.stream().allMatch(CheckedJob::allMet);
	}

	/** @return the jobs that could not be run, or that have a point not met */
	public List<CheckedJob> amiss() {
		return jobs.stream().filter(j -> !j.allMet()).toList();
	}
}
