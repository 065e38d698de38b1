package org.setwright.workbench.history;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.Evaluation;
import org.setwright.workbench.look.EvenHead;

/** Exports the jobs of the open book as one CSV file. */
public final class ExportHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		window.getService(Desk.class).state().latest().map(Evaluation::book).ifPresentOrElse(
				book -> new EvenHead.Wizard(window.getShell(), new ExportWizard(book.folder(), book.catalogue())).open(),
				() -> MessageDialog.openInformation(window.getShell(), Messages.ExportWizard_title, Messages.ImportHandler_noBook));
		return null;
	}
}
