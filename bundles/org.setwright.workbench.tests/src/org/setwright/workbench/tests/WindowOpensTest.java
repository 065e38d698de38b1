package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class WindowOpensTest {
	@Test
	void onTheWritePerspective() {
		assertNotNull(Display.getCurrent(), "these tests run in the window's own thread");
		var page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		assertEquals("org.setwright.workbench.write", page.getPerspective().getId());
	}
}
