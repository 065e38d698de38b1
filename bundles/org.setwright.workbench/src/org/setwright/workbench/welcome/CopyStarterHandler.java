package org.setwright.workbench.welcome;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.statushandlers.StatusManager;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.OpenBook;

/** Copies the starter book to a place the person picks and opens the copy. */
public final class CopyStarterHandler extends AbstractHandler {
	/** The command. */
	public static final String COMMAND = "org.setwright.workbench.copyStarter"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		CopyStarterDialog dialog = new CopyStarterDialog(window.getShell());
		if (window.getActivePage().saveAllEditors(true) && dialog.open() == Window.OK) {
			copy(window, dialog.folder());
		}
		return null;
	}

	private static void copy(IWorkbenchWindow window, Path folder) {
		try {
			StarterBook.copyTo(folder);
			window.getActivePage().closeAllEditors(false);
			new OpenBook(window.getService(Desk.class)).open(folder);
		} catch (IOException e) {
			StatusManager.getManager().handle(
					new Status(IStatus.ERROR, CopyStarterHandler.class, NLS.bind(Messages.CopyStarterHandler_failed, folder), e),
					StatusManager.SHOW | StatusManager.LOG);
		}
	}
}
