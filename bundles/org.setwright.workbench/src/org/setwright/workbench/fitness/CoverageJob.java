package org.setwright.workbench.fitness;

import java.util.List;
import java.util.function.BiConsumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.coverage.Coverage;
import org.setwright.engine.Edition;
import org.setwright.workbench.desk.Evaluation;

/** Counts in the background what the jobs try out, for the newest state of the book; an older count still going on is dropped. */
final class CoverageJob extends Job {
	private static final int PAUSE_MILLIS = 400;
	private final BiConsumer<Evaluation, Coverage> counted;
	private volatile Evaluation newest;

	/** @param counted told, in the window's thread */
	CoverageJob(BiConsumer<Evaluation, Coverage> counted) {
		super(Messages.CoverageJob_name);
		this.counted = counted;
		setPriority(Job.DECORATE);
	}

	void ask(Evaluation evaluation) {
		newest = evaluation;
		cancel();
		schedule(PAUSE_MILLIS);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Evaluation of = newest;
		Edition edition = of.rules().edition().orElse(null);
		List<JobCase> jobs = of.book().jobs();
		if (edition == null) {
			return Status.OK_STATUS;
		}
		return Coverage.of(edition, jobs, new Progress() {
			@Override
			public void done(int done, int all) {
				// quick enough to need no bar
			}

			@Override
			public boolean cancelled() {
				return monitor.isCanceled() || of != newest;
			}
		}).map(coverage -> {
			Display.getDefault().asyncExec(() -> counted.accept(of, coverage));
			return Status.OK_STATUS;
		}).orElse(Status.CANCEL_STATUS);
	}
}
