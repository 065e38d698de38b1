package org.setwright.workbench.bench;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.bench.Session;
import org.setwright.bench.Turn;
import org.setwright.bench.Wish;
import org.setwright.bench.asking.Listing;
import org.setwright.bench.hand.Ground;
import org.setwright.bench.told.Tone;
import org.setwright.bench.words.Named;
import org.setwright.book.JobCase;
import org.setwright.engine.Disagreement;
import org.setwright.engine.change.Watch;

/** Follows lines one after the other in the background. Use it in the window's thread. */
final class BenchWork {
	private final Deque<Task> waiting = new ArrayDeque<>();
	private final Consumer<Done> shown;
	private Optional<Session> session = Optional.empty();
	private Optional<Job> running = Optional.empty();
	private boolean ended;

	/**
	 * Something to be done with a session.
	 *
	 * @param line of which it is; empty when nobody typed it
	 * @param script whether it ends with the first fault
	 * @param picked whether somebody has picked a job
	 */
	private record Task(String line, boolean script, boolean picked, BiFunction<Optional<Session>, Watch, Done> work) {
	}

	/** What came of it. @param session afterwards @param told what to show @param wish what is asked of the window */
	record Done(Optional<Session> session, List<Told> told, Optional<Wish> wish) {
	}

	/** @param shown told, in the window's thread, what came of each line */
	BenchWork(Consumer<Done> shown) {
		this.shown = shown;
	}

	/** @return what lies on the bench; empty while nothing does */
	Optional<Session> session() {
		return session;
	}

	/** @return whether some line is still being followed */
	boolean busy() {
		return running.isPresent() || !waiting.isEmpty();
	}

	/**
	 * Goes on over {@code ground}, the book and job as they are now; lines that were tried are tried again there.
	 *
	 * @param picked whether somebody has picked this job, so that it comes to the bench
	 */
	void goOn(Ground ground, boolean picked) {
		boolean any = picked || waiting.stream().anyMatch(Task::picked);
		waiting.removeIf(t -> t.line().isEmpty());
		add(new Task("", false, any, (now, watch) -> over(now, ground, any, watch))); //$NON-NLS-1$
	}

	/** Follows {@code line}. */
	void say(String line) {
		add(new Task(line, false, false, (now, watch) -> said(now, line, watch)));
	}

	/** Follows {@code lines} up to the first that cannot be. */
	void say(List<String> lines) {
		lines.forEach(line -> add(new Task(line, true, false, (now, watch) -> said(now, line, watch))));
	}

	/** Ends what is being done, and forgets what waits. */
	void stop() {
		waiting.clear();
		running.ifPresent(Job::cancel);
	}

	/** Ends everything for good. */
	void end() {
		ended = true;
		stop();
	}

	private void add(Task task) {
		waiting.add(task);
		next();
	}

	private void next() {
		if (running.isEmpty() && !waiting.isEmpty() && !ended) {
			Job job = new Work(waiting.poll(), session);
			running = Optional.of(job);
			job.schedule();
		}
	}

	private void finished(Task task, Done done) {
		running = Optional.empty();
		if (ended) {
			return;
		}
		session = done.session();
		if (task.script() && done.told().stream().anyMatch(Told::failed)) {
			waiting.removeIf(Task::script);
		}
		shown.accept(done);
		next();
	}

	private static Done said(Optional<Session> now, String line, Watch watch) {
		if (now.isEmpty()) {
			return new Done(now, List.of(Told.sentence(line, Tone.ALARM, Messages.BenchWork_nothing)), Optional.empty());
		}
		Turn turn = now.get().say(line, watch);
		return new Done(Optional.of(turn.session()), List.of(Told.of(line, turn)), turn.wish());
	}

	private static Done over(Optional<Session> now, Ground ground, boolean picked, Watch watch) {
		boolean otherBook = now.isEmpty() || !now.get().hand().ground().book().folder().equals(ground.book().folder());
		if (otherBook || now.get().changes().isEmpty() && !same(now.get().hand().ground(), ground)) {
			boolean newJob = otherBook || !now.get().hand().ground().saved().map(JobCase::path).equals(ground.saved().map(JobCase::path));
			Session fresh = Session.on(ground);
			return new Done(Optional.of(fresh), newJob ? List.of(Told.unasked(new Listing(fresh.hand()).job())) : List.of(), Optional.empty());
		}
		Ground before = now.get().hand().ground();
		if (before.edition() != ground.edition() || !before.jobs().equals(ground.jobs())) {
			Turn turn = now.get().over(ground.with(before.saved().map(JobCase::path).orElse("")), watch); //$NON-NLS-1$
			Done over = new Done(Optional.of(turn.session()), turn.rows().isEmpty() ? List.of() : List.of(Told.unasked(turn.rows())), Optional.empty());
			return picked ? otherJob(over, ground, watch) : over;
		}
		Done same = new Done(now, List.of(), Optional.empty());
		return picked ? otherJob(same, ground, watch) : same;
	}

	/** Picking another job puts it on the bench as a line would; of several in a row only the last counts. */
	private static Done otherJob(Done done, Ground ground, Watch watch) {
		Session session = done.session().orElseThrow();
		JobCase wanted = ground.saved().orElse(null);
		if (wanted == null || session.hand().job().path().equals(wanted.path())) {
			return done;
		}
		List<String> changes = session.changes();
		boolean again = changes.get(changes.size() - 1).startsWith("job "); //$NON-NLS-1$
		String line = "job " + Named.shortName(wanted); //$NON-NLS-1$
		Turn turn = (again ? session.say("undo", watch).session() : session).say(line, watch); //$NON-NLS-1$
		List<Told> told = new ArrayList<>(done.told());
		told.add(Told.of(line, turn));
		return new Done(Optional.of(turn.session()), told, Optional.empty());
	}

	private static boolean same(Ground a, Ground b) {
		return a.edition() == b.edition() && a.saved().equals(b.saved()) && a.jobs().equals(b.jobs());
	}

	/** One line being followed. */
	private final class Work extends Job {
		private final Task task;
		private final Optional<Session> from;

		Work(Task task, Optional<Session> from) {
			super(Messages.BenchWork_name);
			this.task = task;
			this.from = from;
			setPriority(Job.SHORT);
		}

		@Override
		protected IStatus run(IProgressMonitor monitor) {
			try {
				tell(task.work().apply(from, changes -> !monitor.isCanceled()));
				return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
			} catch (Disagreement none) {
				tell(new Done(from, List.of(Told.sentence(task.line(), Tone.ALARM, none.getMessage())), Optional.empty()));
				return Status.OK_STATUS;
			} catch (RuntimeException fault) {
				tell(new Done(from, List.of(Told.sentence(task.line(), Tone.ALARM, Messages.BenchWork_fault)), Optional.empty()));
				return new Status(IStatus.ERROR, BenchWork.class, Messages.BenchWork_fault, fault);
			}
		}

		private void tell(Done done) {
			Display.getDefault().asyncExec(() -> finished(task, done));
		}
	}
}
