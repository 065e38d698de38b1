package org.setwright.workbench.shell;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Display;
import org.setwright.workbench.look.WholeLine;

/** Shows what stands in the picked line of the list with the cursor, whatever its columns cut off. */
public final class WholeLineHandler extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		WholeLine.show(Display.getCurrent().getFocusControl());
		return null;
	}
}
