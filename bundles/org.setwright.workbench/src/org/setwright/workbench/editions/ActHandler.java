package org.setwright.workbench.editions;

import java.util.Locale;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the editions, and does there what the command is called: the last part of its name is the name of the act. */
public final class ActHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		String name = event.getCommand().getId().replaceAll(".*\\.", ""); //$NON-NLS-1$ //$NON-NLS-2$
		try {
			EditionsView view = (EditionsView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(EditionsView.ID);
			view.act(EditionsView.Act.valueOf(name.replace('-', '_').toUpperCase(Locale.ROOT)));
			return null;
		} catch (PartInitException e) {
			throw new ExecutionException(e.getMessage(), e);
		}
	}
}
