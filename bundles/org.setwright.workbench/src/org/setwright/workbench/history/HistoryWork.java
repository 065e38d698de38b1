package org.setwright.workbench.history;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.ImportCutOff;

/** Work on many jobs that may end in a disk error. */
interface HistoryWork {
	/** @return what came of it; never null */
	HistoryResult run(IProgressMonitor monitor) throws IOException;

	/**
	 * Runs {@code work} beside the window, with the progress bar of the wizard.
	 *
	 * @param failed what {@code page} says after a disk error
	 * @return empty when it failed; the page says why
	 */
	static Optional<HistoryResult> beside(WizardPage page, HistoryWork work, String failed) {
		HistoryResult[] came = new HistoryResult[1];
		page.setErrorMessage(null);
		try {
			page.getWizard().getContainer().run(true, true, monitor -> {
				try {
					came[0] = work.run(monitor);
				} catch (IOException e) {
					throw new InvocationTargetException(e);
				}
			});
		} catch (InvocationTargetException e) {
			if (!(e.getCause() instanceof IOException)) {
				throw new IllegalStateException(e.getCause());
			}
			page.setErrorMessage(NLS.bind(e.getCause() instanceof ImportCutOff ? Messages.ImportWizard_cutOff : failed, e.getCause().getMessage()));
		} catch (InterruptedException ended) {
			Thread.currentThread().interrupt();
		}
		return Optional.ofNullable(came[0]);
	}
}
