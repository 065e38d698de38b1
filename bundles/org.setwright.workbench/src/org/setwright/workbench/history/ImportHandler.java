package org.setwright.workbench.history;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.book.Book;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.look.EvenHead;
import org.setwright.workbench.look.Type;

/** Imports jobs from a CSV file into the open book, or into another folder. */
public final class ImportHandler extends AbstractHandler {
	private static final int LETTERS = 128;
	private static final int LINES = 28;
	/** What the dialog has above and below its page. */
	private static final int CHROME_LINES = 8;
	/** How much of the screen it takes at most, in tenths. */
	private static final int AT_MOST = 8;

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		window.getService(Desk.class).state().latest().map(Evaluation::book).ifPresentOrElse(book -> open(window, book),
				() -> MessageDialog.openInformation(window.getShell(), Messages.ImportWizard_title, Messages.ImportHandler_noBook));
		return null;
	}

	private static void open(IWorkbenchWindow window, Book book) {
		ImportWizard wizard = new ImportWizard(book);
		EvenHead.Wizard dialog = new EvenHead.Wizard(window.getShell(), wizard);
		Point wanted = Type.room(window.getShell(), LETTERS, LINES);
		Rectangle screen = window.getShell().getMonitor().getClientArea();
		dialog.setPageSize(Math.min(wanted.x, screen.width * AT_MOST / 10), Math.min(wanted.y, screen.height * AT_MOST / 10 - CHROME_LINES * wanted.y / LINES));
		if (dialog.open() == Window.OK) {
			MessageDialog.openInformation(window.getShell(), Messages.ImportWizard_title, NLS.bind(Messages.ImportHandler_done, wizard.imported()));
		}
	}
}
