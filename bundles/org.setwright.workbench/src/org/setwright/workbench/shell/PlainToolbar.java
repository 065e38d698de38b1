package org.setwright.workbench.shell;

import java.util.List;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;

/** Keeps out of the menus and the toolbar what the platform adds for programmers. */
final class PlainToolbar extends PerspectiveAdapter {
	private static final List<String> NOT_WANTED = List.of("org.eclipse.ui.edit.text.actionSet.annotationNavigation", //$NON-NLS-1$
			"org.eclipse.ui.edit.text.actionSet.navigation", "org.eclipse.ui.edit.text.actionSet.convertLineDelimitersTo", //$NON-NLS-1$ //$NON-NLS-2$
			"org.eclipse.ui.edit.text.actionSet.presentation", "org.eclipse.ui.edit.text.actionSet.openExternalFile"); //$NON-NLS-1$ //$NON-NLS-2$

	/** Begins with {@code window}, for as long as it lives. */
	void in(IWorkbenchWindow window) {
		window.addPerspectiveListener(this);
		perspectiveActivated(window.getActivePage(), window.getActivePage().getPerspective());
	}

	@Override
	public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
		NOT_WANTED.forEach(page::hideActionSet);
	}
}
