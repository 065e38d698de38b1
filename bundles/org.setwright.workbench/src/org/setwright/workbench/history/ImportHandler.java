package org.setwright.workbench.history;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.book.Book;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.Evaluation;

/** Imports jobs from a CSV file into the open book, or into another folder. */
public final class ImportHandler extends AbstractHandler {
	private static final int WIDTH = 900;
	private static final int HEIGHT = 480;

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		window.getService(Desk.class).state().latest().map(Evaluation::book).ifPresentOrElse(book -> open(window, book),
				() -> MessageDialog.openInformation(window.getShell(), Messages.ImportWizard_title, Messages.ImportHandler_noBook));
		return null;
	}

	private static void open(IWorkbenchWindow window, Book book) {
		ImportWizard wizard = new ImportWizard(book);
		WizardDialog dialog = new WizardDialog(window.getShell(), wizard);
		dialog.setPageSize(WIDTH, HEIGHT);
		if (dialog.open() == Window.OK) {
			MessageDialog.openInformation(window.getShell(), Messages.ImportWizard_title, NLS.bind(Messages.ImportHandler_done, wizard.imported()));
		}
	}
}
