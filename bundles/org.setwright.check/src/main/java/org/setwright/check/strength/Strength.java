package org.setwright.check.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.setwright.book.ItemList;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.cases.CheckedJob;
import org.setwright.engine.Amendment;
import org.setwright.engine.Edition;
import org.setwright.engine.Rehearsal;
import org.setwright.engine.change.Telltale;
import org.setwright.engine.language.Action;
import org.setwright.engine.language.Rule;
import org.setwright.engine.outcome.Outcome;

/**
 * The share of deliberate small mistakes that some saved job notices.
 *
 * @param tried every mistake, by position
 * @param left jobs that noticed nothing, because they expect nothing or do not meet what they expect even without a mistake
 */
public record Strength(List<Tried> tried, List<JobCase> left) {
	public Strength {
		tried = List.copyOf(tried);
		left = List.copyOf(left);
	}

	/**
	 * What became of one mistake.
	 *
	 * @param noticedBy the first saved job that met its expectations without the mistake and does not with it
	 * @param telltale when nobody noticed: a job that would, if one was looked for and found
	 */
	public record Tried(Mistake mistake, Optional<JobCase> noticedBy, Optional<Telltale> telltale) {
	}

	/**
	 * Makes every mistake in turn, on all cores.
	 *
	 * @return what came of it; of the mistakes that were tried, when it was cancelled
	 */
	public static Strength of(Edition edition, List<JobCase> jobs, Progress progress) {
		List<Watch> watches = new ArrayList<>();
		List<JobCase> left = new ArrayList<>();
		for (JobCase job : jobs) {
			Rehearsal rehearsal = edition.rehearse(job.job());
			if (job.expectations() > 0 && met(job, rehearsal.outcome())) {
				watches.add(new Watch(job, rehearsal, new Readings(job)));
			} else {
				left.add(job);
			}
		}
		List<Mistake> mistakes = Mistakes.in(edition.rules());
		AtomicInteger done = new AtomicInteger();
		List<Tried> tried = mistakes.parallelStream().filter(m -> !progress.cancelled()).map(mistake -> {
			Optional<JobCase> noticedBy = noticed(mistake, amendment(edition, mistake), watches);
			progress.done(done.incrementAndGet(), mistakes.size());
			return new Tried(mistake, noticedBy, Optional.empty());
		}).toList();
		return new Strength(tried, left);
	}

	/**
	 * Looks for a job that would notice each mistake which nobody noticed.
	 *
	 * @param edition the one this is the strength of
	 * @param jobs to start from
	 */
	public Strength withTelltales(Edition edition, List<JobCase> jobs, Progress progress) {
		List<Tried> survivors = survivors();
		AtomicInteger done = new AtomicInteger();
		List<Tried> all = tried.parallelStream().map(t -> {
			if (t.noticedBy.isPresent() || progress.cancelled()) {
				return t;
			}
			Optional<Telltale> telltale = edition.tellApart(amendment(edition, t.mistake), jobs.stream().map(JobCase::job).toList(), progress::cancelled);
			progress.done(done.incrementAndGet(), survivors.size());
			return new Tried(t.mistake, t.noticedBy, telltale);
		}).toList();
		return new Strength(all, left);
	}

	/** @return the mistakes nobody noticed, by position */
	public List<Tried> survivors() {
		return tried.stream().filter(t -> t.noticedBy.isEmpty()).toList();
	}

	/** @return the share of mistakes noticed, from 0 to 1; 1 when there were none to make */
	public double share() {
		return tried.isEmpty() ? 1 : 1 - (double) survivors().size() / tried.size();
	}

	private record Watch(JobCase job, Rehearsal rehearsal, Readings readings) {
		/** A quick look: whether anything this job expects can depend on what the mistake touches. */
		boolean asksFor(Mistake mistake) {
			return Stream.concat(Stream.of(mistake.rule()), mistake.instead().stream()).flatMap(r -> r.then().stream())
					.anyMatch(this::asksFor);
		}

		private boolean asksFor(Action action) {
			if (action instanceof Action.Propose propose) {
				return job.expected().containsKey(propose.setting()) || readings.matter(propose.setting());
			}
			return action instanceof Action.Find || asksFor(action instanceof Action.Warn ? ItemList.Topic.CAUTIONS : ItemList.Topic.START_UP);
		}

		private boolean asksFor(ItemList.Topic topic) {
			return job.items().stream().anyMatch(i -> i.list().topic() == topic);
		}

		boolean notices(Amendment amendment) {
			Rehearsal after = rehearsal.under(amendment);
			return after != rehearsal && !met(job, after.outcome());
		}
	}

	private static boolean met(JobCase job, Outcome outcome) {
		return CheckedJob.of(job, outcome).allMet();
	}

	private static Optional<JobCase> noticed(Mistake mistake, Amendment amendment, List<Watch> watches) {
		return watches.stream().filter(w -> w.asksFor(mistake) && w.notices(amendment)).findFirst().map(Watch::job);
	}

	/** @return {@code edition} with the mistake in it */
	public static Amendment amendment(Edition edition, Mistake mistake) {
		return edition.amend(mistake.rule(), mistake.instead().map(r -> new Rule[] { r }).orElse(new Rule[0]));
	}
}
