package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.trade.Trade;

/** Works out evaluations in the background, the newest question first: an older one still being worked out is dropped. */
final class EvaluationJob extends Job {
	/** Long enough for the next key to arrive, short enough not to be felt. */
	private static final int PAUSE_MILLIS = 120;
	/** Work that is done sooner needs no telling how far it is. */
	private static final long BETWEEN_NANOS = 200_000_000;

	/** A question. @param stamp larger than that of every earlier one @param previous what may be built upon */
	record Request(long stamp, Path folder, Drafts drafts, Optional<Evaluation> previous) {
	}

	/** Who is told, in the window's thread. */
	interface Told {
		void evaluated(Request request, Evaluation evaluation);

		/** How many jobs have been run. */
		void far(int done, int all);

		/** Somebody has ended it, and nothing newer is asked. */
		void stopped();
	}

	private final Told told;
	private final Evaluator evaluator = new Evaluator(Trade.catalogue());
	private volatile Request newest;
	private volatile long answered;

	EvaluationJob(Told told) {
		super(Messages.EvaluationJob_name);
		this.told = told;
		setPriority(Job.SHORT);
	}

	void ask(Request request) {
		newest = request;
		cancel();
		schedule(request.previous().isEmpty() ? 0 : PAUSE_MILLIS);
	}

	boolean awaited() {
		return newest != null && newest.stamp() != answered;
	}

	/** A fault in the program itself is told once, in a sentence; its trace goes to the log. */
	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Request request = newest;
		try {
			return work(request, monitor);
		} catch (RuntimeException fault) {
			Display.getDefault().asyncExec(() -> answered = Math.max(answered, request.stamp()));
			return new Status(IStatus.ERROR, EvaluationJob.class, Messages.EvaluationJob_fault, fault);
		}
	}

	private IStatus work(Request request, IProgressMonitor monitor) {
		Optional<Evaluation> evaluation = evaluator.evaluate(request.folder(), request.drafts(), request.previous(), new Watched(request, monitor));
		Display.getDefault().asyncExec(() -> {
			if (evaluation.isPresent()) {
				answered = Math.max(answered, request.stamp());
				told.evaluated(request, evaluation.get());
			} else if (request == newest) {
				answered = Math.max(answered, request.stamp());
				told.stopped();
			}
		});
		return evaluation.isPresent() ? Status.OK_STATUS : Status.CANCEL_STATUS;
	}

	/** Ends the work, also when it has not begun yet. */
	void stop() {
		cancel();
		if (getState() != Job.RUNNING && awaited()) {
			answered = Math.max(answered, newest.stamp());
			told.stopped();
		}
	}

	/** Several threads tell of their progress, and the window wants to hear of it now and then. */
	private final class Watched implements Evaluator.Watch {
		private final Request request;
		private final IProgressMonitor monitor;
		private int counted;
		private long last = System.nanoTime();

		Watched(Request request, IProgressMonitor monitor) {
			this.request = request;
			this.monitor = monitor;
		}

		@Override
		public boolean dropped() {
			return monitor.isCanceled() || request != newest;
		}

		@Override
		public synchronized void ran(int done, int all) {
			if (counted == 0) {
				monitor.beginTask(Messages.EvaluationJob_name, all);
			}
			if (done > counted) {
				monitor.worked(done - counted);
				counted = done;
				if (System.nanoTime() - last > BETWEEN_NANOS) {
					last = System.nanoTime();
					Display.getDefault().asyncExec(() -> {
						if (request == newest && awaited()) {
							told.far(done, all);
						}
					});
				}
			}
		}
	}
}
