package org.setwright.workbench.shell;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.setwright.workbench.look.SpokenSigns;
import org.setwright.workbench.theme.Ground;

/** Starts the window and waits until it is closed. */
public final class Application implements IApplication {

	@Override
	public Object start(IApplicationContext context) {
		Display display = PlatformUI.createDisplay();
		SpokenSigns.on(display);
		HidingTips.on(display);
		Ground.chosen().draw();
		try {
			int ended = PlatformUI.createAndRunWorkbench(display, new ShellAdvisor());
			return ended == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
		} finally {
			display.dispose();
		}
	}

	@Override
	public void stop() {
		if (PlatformUI.isWorkbenchRunning()) {
			Display display = PlatformUI.getWorkbench().getDisplay();
			display.syncExec(() -> PlatformUI.getWorkbench().close());
		}
	}
}
