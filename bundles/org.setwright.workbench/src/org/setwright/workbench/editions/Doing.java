package org.setwright.workbench.editions;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.setwright.editions.kept.NotDone;

/** Does something to the editions of a book beside the window. When it is not done, says plainly why not and what to do. */
final class Doing {
	private Doing() {
	}

	/**
	 * @param name what is done, for people
	 * @param then told what came of it, in the window's thread; not when it was cancelled or not done
	 */
	static <T> void start(Shell shell, String name, Asking.Work<T> work, Consumer<T> then) {
		Job job = Job.create(name, monitor -> {
			try {
				Optional<T> came = work.of(monitor);
				came.filter(c -> !monitor.isCanceled()).ifPresent(c -> later(shell, () -> then.accept(c)));
				return came.isEmpty() || monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
			} catch (NotDone no) {
				later(shell, () -> refuse(shell, name, no));
				return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
			} catch (RuntimeException fault) {
				return new Status(IStatus.ERROR, Doing.class, Messages.Asking_fault, fault);
			}
		});
		job.setUser(true);
		job.schedule();
	}

	private static void later(Shell shell, Runnable does) {
		Display.getDefault().asyncExec(() -> {
			if (!shell.isDisposed()) {
				does.run();
			}
		});
	}

	static void refuse(Shell shell, String title, NotDone no) {
		MessageDialog.openWarning(shell, title, no.what() + "\n\n" + no.remedy()); //$NON-NLS-1$
	}
}
