package org.setwright.workbench.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.book.AtomicFile;
import org.setwright.book.Book;
import org.setwright.book.JobCase;
import org.setwright.book.JobNotWritten;
import org.setwright.book.JobWriter;
import org.setwright.trade.catalogue.Job;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookProject;
import org.setwright.workbench.folder.Places;

/** Makes a job about which nothing is known yet and opens its form. */
public final class NewJobHandler extends AbstractHandler {
	private static final int LONGEST_FILE_NAME = 60;

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		Optional<Book> book = window.getService(Desk.class).state().latest().map(e -> e.book());
		if (book.isPresent()) {
			InputDialog dialog = new InputDialog(window.getShell(), Messages.NewJobHandler_title, Messages.NewJobHandler_message, "", //$NON-NLS-1$
					name -> wrong(book.get(), name));
			if (dialog.open() == Window.OK) {
				make(window, book.get(), dialog.getValue().strip());
			}
		}
		return null;
	}

	/** @return what is wrong with {@code name}, or null when it may be taken */
	static String wrong(Book book, String name) {
		if (name.isBlank()) {
			return Messages.NewJobHandler_noName;
		} else if (book.jobs().stream().anyMatch(j -> j.name().equalsIgnoreCase(name.strip()))) {
			return NLS.bind(Messages.NewJobHandler_taken, name.strip());
		}
		return null;
	}

	/** @return a file for a job called {@code name}, below the folder of the book, that does not exist yet */
	static String file(Path folder, String name) {
		String words = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", ""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		String stem = "jobs/" + (words.isEmpty() ? "job" : words.substring(0, Math.min(words.length(), LONGEST_FILE_NAME))); //$NON-NLS-1$ //$NON-NLS-2$
		String file = stem + ".yaml"; //$NON-NLS-1$
		for (int i = 2; Files.exists(folder.resolve(file)); i++) {
			file = stem + '-' + i + ".yaml"; //$NON-NLS-1$
		}
		return file;
	}

	private static void make(IWorkbenchWindow window, Book book, String name) {
		String path = file(book.folder(), name);
		try {
			String text = new JobWriter(book.catalogue()).write(new JobCase(path, name, "", Job.blank(), Map.of(), Map.of())); //$NON-NLS-1$
			Path file = book.folder().resolve(path);
			Files.createDirectories(file.getParent());
			AtomicFile.write(file, text);
			BookProject.linked().orElseThrow().refreshLocal(IResource.DEPTH_INFINITE, null);
			Places.openJob(window.getActivePage(), path);
		} catch (IOException | JobNotWritten | CoreException e) {
			StatusManager.getManager().handle(
					new Status(IStatus.ERROR, NewJobHandler.class, NLS.bind(Messages.NewJobHandler_failed, path), e),
					StatusManager.SHOW | StatusManager.LOG);
		}
	}
}
