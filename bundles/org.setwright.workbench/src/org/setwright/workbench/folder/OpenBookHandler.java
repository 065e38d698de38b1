package org.setwright.workbench.folder;

import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.workbench.desk.Desk;

/** Asks for the folder of a rule book and opens it; with the parameter, opens that folder without asking. */
public final class OpenBookHandler extends AbstractHandler {
	/** The command. */
	public static final String COMMAND = "org.setwright.workbench.openBook"; //$NON-NLS-1$
	/** Its parameter: the folder. */
	public static final String FOLDER = "org.setwright.workbench.openBook.folder"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		String given = event.getParameter(FOLDER);
		String folder = given != null ? given : ask(window.getShell());
		if (folder != null) {
			open(window, Path.of(folder));
		}
		return null;
	}

	private static String ask(Shell shell) {
		DirectoryDialog dialog = new DirectoryDialog(shell, SWT.OPEN);
		dialog.setText(Messages.OpenBookHandler_title);
		dialog.setMessage(Messages.OpenBookHandler_message);
		return dialog.open();
	}

	private static void open(IWorkbenchWindow window, Path folder) {
		if (!OpenBook.isBook(folder)) {
			MessageDialog.openInformation(window.getShell(), Messages.OpenBookHandler_title,
					NLS.bind(Messages.OpenBookHandler_notABook, folder));
		} else if (window.getActivePage().saveAllEditors(true)) {
			window.getActivePage().closeAllEditors(false);
			new OpenBook(window.getService(Desk.class)).open(folder);
		}
	}
}
