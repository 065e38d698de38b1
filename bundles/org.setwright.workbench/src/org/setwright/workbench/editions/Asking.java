package org.setwright.workbench.editions;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;
import org.setwright.editions.kept.NotDone;

/** Finds something out beside the window. Only the newest question counts: whatever comes to an older one is dropped. */
final class Asking<T> extends Job {
	private static final int PAUSE_MILLIS = 200;
	private final Consumer<T> told;
	private final Consumer<NotDone> refused;
	private volatile Work<T> newest;
	private volatile Work<T> begun;

	/** What takes time. */
	@FunctionalInterface
	interface Work<T> {
		/** @return empty when it was cancelled */
		Optional<T> of(IProgressMonitor monitor) throws NotDone;
	}

	/** @param told the answer, in the window's thread @param refused told why there is none, in the window's thread */
	Asking(String name, Consumer<T> told, Consumer<NotDone> refused) {
		super(name);
		this.told = told;
		this.refused = refused;
		setPriority(Job.DECORATE);
		addJobChangeListener(new JobChangeAdapter() {
			@Override
			public void done(IJobChangeEvent event) {
				if (newest != null && newest != begun) {
					schedule(PAUSE_MILLIS);
				}
			}
		});
	}

	void ask(Work<T> work) {
		newest = work;
		cancel();
		schedule(PAUSE_MILLIS);
	}

	/** Nothing is to be told any more. */
	void drop() {
		newest = null;
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Work<T> mine = newest;
		begun = mine;
		if (mine == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			mine.of(monitor).ifPresent(answer -> later(mine, () -> told.accept(answer)));
		} catch (NotDone no) {
			later(mine, () -> refused.accept(no));
		} catch (RuntimeException fault) {
			Platform.getLog(Asking.class).error(getName(), fault);
			later(mine, () -> refused.accept(new NotDone(Messages.Asking_fault, Messages.Asking_again, fault)));
		}
		return Status.OK_STATUS;
	}

	private void later(Work<T> mine, Runnable tell) {
		Display.getDefault().asyncExec(() -> {
			if (mine == newest) {
				tell.run();
			}
		});
	}
}
