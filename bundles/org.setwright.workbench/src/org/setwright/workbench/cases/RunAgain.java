package org.setwright.workbench.cases;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.setwright.book.JobCase;
import org.setwright.check.Progress;
import org.setwright.check.cases.CaseCheck;
import org.setwright.engine.Edition;

/** Runs jobs once more, whatever is known of them, beside the window; it can be watched and ended in Progress. */
final class RunAgain extends Job {
	private final Edition edition;
	private final List<JobCase> jobs;
	private final Consumer<CaseCheck> done;

	/** @param done told the result, in the window's thread; not when cancelled */
	RunAgain(Edition edition, List<JobCase> jobs, Consumer<CaseCheck> done) {
		super(NLS.bind(Messages.RunAgain_name, jobs.size()));
		this.edition = edition;
		this.jobs = jobs;
		this.done = done;
		setUser(true);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		monitor.beginTask(getName(), jobs.size());
		return CaseCheck.of(edition, jobs, new Watched(monitor), true).map(check -> {
			Display.getDefault().asyncExec(() -> done.accept(check));
			return Status.OK_STATUS;
		}).orElse(Status.CANCEL_STATUS);
	}

	/** Several threads tell of their progress, and a monitor wants them one after the other. */
	private static final class Watched implements Progress {
		private final IProgressMonitor monitor;
		private int told;

		Watched(IProgressMonitor monitor) {
			this.monitor = monitor;
		}

		@Override
		public synchronized void done(int number, int all) {
			if (number > told) {
				monitor.worked(number - told);
				told = number;
			}
		}

		@Override
		public boolean cancelled() {
			return monitor.isCanceled();
		}
	}
}
