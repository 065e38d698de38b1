package org.setwright.workbench.fixes;

import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.book.Position;
import org.setwright.book.ShopSettingDraft;
import org.setwright.book.ShopSettings;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.BookTexts;
import org.setwright.workbench.folder.Places;
import org.setwright.writing.Manuscript;

/** Adds a setting of the shop's own to the open book, and shows where it stands. */
public final class NewSettingHandler extends AbstractHandler {
	private static final ShopSettingDraft NOTHING = new ShopSettingDraft("", "", "", "", ""); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$ //$NON-NLS-5$

	@Override
	public Object execute(ExecutionEvent event) {
		IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
		Optional<Manuscript> book = BookTexts.manuscript(window.getService(Desk.class).state());
		if (book.isEmpty()) {
			MessageDialog.openInformation(window.getShell(), Messages.SettingDialog_title, Messages.NewSettingHandler_noBook);
		} else if (FixDone.asked(window.getShell(), Messages.SettingDialog_title, NOTHING)) {
			Places.open(window.getActivePage(), Position.whole(ShopSettings.FILE));
		}
		return null;
	}
}
