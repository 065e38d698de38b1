package org.setwright.workbench.desk;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
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

	/** A question. @param stamp larger than that of every earlier one @param previous what may be built upon */
	record Request(long stamp, Path folder, Drafts drafts, Optional<Evaluation> previous) {
	}

	private final BiConsumer<Request, Evaluation> answer;
	private final Evaluator evaluator = new Evaluator(Trade.catalogue());
	private volatile Request newest;
	private volatile long answered;

	/** @param answer called in the window's thread */
	EvaluationJob(BiConsumer<Request, Evaluation> answer) {
		super(Messages.EvaluationJob_name);
		this.answer = answer;
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
		Optional<Evaluation> evaluation = evaluator.evaluate(request.folder(), request.drafts(), request.previous(),
				() -> monitor.isCanceled() || request != newest);
		evaluation.ifPresent(e -> Display.getDefault().asyncExec(() -> {
			answered = Math.max(answered, request.stamp());
			answer.accept(request, e);
		}));
		return evaluation.isPresent() ? Status.OK_STATUS : Status.CANCEL_STATUS;
	}
}
