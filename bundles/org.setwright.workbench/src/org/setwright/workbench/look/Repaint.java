package org.setwright.workbench.look;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

/** Has something painted again when the person changes between light and dark. */
public final class Repaint {
	private Repaint() {
	}

	/**
	 * Calls {@code paint} in the window's thread after each change, until {@code control} is disposed: once at once, and once
	 * more when the operating system has taken the change over, because only then its colours tell light from dark.
	 */
	public static void with(Control control, Runnable paint) {
		IEventBroker broker = PlatformUI.getWorkbench().getService(IEventBroker.class);
		Runnable unlessGone = () -> {
			if (!control.isDisposed()) {
				paint.run();
			}
		};
		EventHandler handler = event -> unlessGone.run();
		broker.subscribe(IThemeEngine.Events.THEME_CHANGED, handler);
		// the system gives its controls their new ground some time after everybody has been told, and says so
		Display display = control.getDisplay();
		Listener settings = event -> display.asyncExec(unlessGone);
		display.addListener(SWT.Settings, settings);
		control.addDisposeListener(e -> {
			broker.unsubscribe(handler);
			display.removeListener(SWT.Settings, settings);
		});
	}
}
