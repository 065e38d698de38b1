package org.setwright.workbench.shell;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.FolderChanges;

/** Reads the rule book again from its folder. */
public final class RefreshHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		FolderChanges.look();
		HandlerUtil.getActiveWorkbenchWindow(event).getService(Desk.class).refresh();
		return null;
	}
}
