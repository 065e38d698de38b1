package org.setwright.workbench.fitness;

import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.setwright.check.Progress;
import org.setwright.check.strength.Strength;

/** Makes mistakes, or looks for jobs that would notice them, beside the window. What has been done when it is stopped is kept. */
final class StrengthJob extends Job {
	private static final long BETWEEN_NANOS = 100_000_000;
	private final Function<Progress, Strength> work;
	private final Told told;

	/** Who is told, in the window's thread. */
	interface Told {
		/** How far it is. */
		void far(int done, int all);

		/** It has ended. @param stopped whether before its end */
		void ended(Strength strength, boolean stopped);

		/** It has ended by a fault of the program. */
		void failed();
	}

	StrengthJob(String name, Function<Progress, Strength> work, Told told) {
		super(name);
		this.work = work;
		this.told = told;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			Strength strength = work.apply(new Watched(monitor));
			boolean stopped = monitor.isCanceled();
			later(t -> t.ended(strength, stopped));
			return stopped ? Status.CANCEL_STATUS : Status.OK_STATUS;
		} catch (RuntimeException fault) {
			later(Told::failed);
			return new Status(IStatus.ERROR, StrengthJob.class, Messages.StrengthJob_fault, fault);
		}
	}

	private void later(Consumer<Told> tell) {
		Display.getDefault().asyncExec(() -> tell.accept(told));
	}

	/** Several threads tell of their progress, and the window wants to hear of it now and then. */
	private final class Watched implements Progress {
		private final IProgressMonitor monitor;
		private int counted;
		private long last;

		Watched(IProgressMonitor monitor) {
			this.monitor = monitor;
		}

		@Override
		public synchronized void done(int done, int all) {
			if (counted == 0) {
				monitor.beginTask(getName(), all);
			}
			if (done > counted) {
				monitor.worked(done - counted);
				counted = done;
				if (System.nanoTime() - last > BETWEEN_NANOS || done == all) {
					last = System.nanoTime();
					later(t -> t.far(done, all));
				}
			}
		}

		@Override
		public boolean cancelled() {
			return monitor.isCanceled();
		}
	}
}
