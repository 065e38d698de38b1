package org.setwright.workbench.theme;

import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Switches between light and dark. */
public final class GroundHandler extends AbstractHandler implements IElementUpdater {
	private static final int AT_LATEST_MILLIS = 1000;
	private static final String COMMAND = "org.setwright.workbench.dark"; //$NON-NLS-1$

	@Override
	public Object execute(ExecutionEvent event) {
		Ground wanted = Ground.chosen() == Ground.DARK ? Ground.LIGHT : Ground.DARK;
		wanted.draw();
		follow(wanted, Display.getCurrent());
		return null;
	}

	/** Takes the style sheet over as soon as the colours of the operating system, which it names, are those of {@code wanted}. */
	private static void follow(Ground wanted, Display display) {
		Runnable take = new Runnable() {
			private boolean taken;

			@Override
			public void run() {
				if (!taken && !display.isDisposed()) {
					taken = true;
					PlatformUI.getWorkbench().getService(IThemeEngine.class).setTheme(wanted.themeId(), true);
					PlatformUI.getWorkbench().getService(ICommandService.class).refreshElements(COMMAND, null);
				}
			}
		};
		display.addListener(SWT.Settings, new Listener() {
			@Override
			public void handleEvent(Event event) {
				display.removeListener(SWT.Settings, this);
				display.asyncExec(take);
			}
		});
		display.timerExec(AT_LATEST_MILLIS, take);
	}

	@Override
	public void updateElement(UIElement element, @SuppressWarnings("rawtypes") Map parameters) {
		element.setChecked(Ground.chosen() == Ground.DARK);
	}
}
