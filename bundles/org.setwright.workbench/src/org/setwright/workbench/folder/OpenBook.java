package org.setwright.workbench.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.book.history.UnfinishedImports;
import org.setwright.workbench.desk.Desk;

/** Opens a rule book: links its folder, reads it, notes it among the recent ones. */
public final class OpenBook {
	private static final String DETAILS = "book.yaml"; //$NON-NLS-1$
	private final Desk desk;

	/** @param desk on which the book is put */
	public OpenBook(Desk desk) {
		this.desk = desk;
	}

	/** @return whether {@code folder} looks like a rule book */
	public static boolean isBook(Path folder) {
		return Files.isRegularFile(folder.resolve(DETAILS));
	}

	/** Opens the book in the background, with progress. */
	public void open(Path folder) {
		ICoreRunnable link = monitor -> {
			try {
				UnfinishedImports.settle(folder);
			} catch (IOException e) {
				StatusManager.getManager().handle(new Status(IStatus.WARNING, OpenBook.class, NLS.bind(Messages.OpenBook_importStuck, folder), e),
						StatusManager.SHOW | StatusManager.LOG);
			}
			try {
				BookProject.link(folder, monitor);
			} catch (CoreException e) {
				throw new CoreException(new Status(IStatus.ERROR, OpenBook.class, NLS.bind(Messages.OpenBook_cannotOpen, folder), e));
			}
			Display.getDefault().asyncExec(() -> {
				new RecentBooks().opened(folder);
				desk.open(folder);
			});
		};
		Job job = Job.create(NLS.bind(Messages.OpenBook_name, folder.getFileName()), link);
		job.setUser(true);
		job.schedule();
	}
}
