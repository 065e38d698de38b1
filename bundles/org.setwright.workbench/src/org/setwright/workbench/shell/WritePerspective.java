package org.setwright.workbench.shell;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** For the person who writes the rules. */
public final class WritePerspective implements IPerspectiveFactory {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.write";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		layout.setEditorAreaVisible(true);
	}
}
