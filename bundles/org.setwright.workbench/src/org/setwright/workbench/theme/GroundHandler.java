package org.setwright.workbench.theme;

import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Switches between light and dark. */
public final class GroundHandler extends AbstractHandler implements IElementUpdater {
	private static final String COMMAND = "org.setwright.workbench.dark"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		Ground wanted = Ground.chosen() == Ground.DARK ? Ground.LIGHT : Ground.DARK;
		wanted.draw();
		PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(wanted.themeId(), true);
		PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
		return null;
	}

	@Override
	public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
		element.setChecked(Ground.chosen() == Ground.DARK);
	}
}
