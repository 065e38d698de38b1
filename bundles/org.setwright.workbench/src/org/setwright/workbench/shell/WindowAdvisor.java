package org.setwright.workbench.shell;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Shapes the window. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {
	private static final Point SIZE = new Point(1280, 860);

	WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		window.setInitialSize(SIZE);
		window.setTitle("Setwright");
		window.setShowCoolBar(false);
		window.setShowStatusLine(true);
		window.setShowPerspectiveBar(true);
		window.setShowProgressIndicator(true);
	}
}
