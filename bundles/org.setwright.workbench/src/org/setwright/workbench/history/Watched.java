package org.setwright.workbench.history;

import org.eclipse.core.runtime.IProgressMonitor;
import org.setwright.book.history.HistoryResult;

/** Tells a progress bar of each job, and ends the work when the person says so. @param ticks of the bar for each job */
record Watched(IProgressMonitor monitor, int ticks) implements HistoryResult.Watcher {

	@Override
	public boolean goOn(int jobs, int all) {
		monitor.worked(ticks);
		return !monitor.isCanceled();
	}

	@Override
	public void placing(int steps, int all) {
		monitor.worked(1);
	}
}
