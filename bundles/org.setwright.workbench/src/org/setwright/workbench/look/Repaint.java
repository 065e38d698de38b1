package org.setwright.workbench.look;

import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;
import org.osgi.service.event.EventHandler;

/** Has something painted again when the person changes between light and dark. */
public final class Repaint {
	private Repaint() {
	}

	/** Calls {@code paint} in the window's thread after each change, until {@code control} is disposed. */
	public static void with(Control control, Runnable paint) {
		IEventBroker broker = PlatformUI.getWorkbench().getService(IEventBroker.class);
		EventHandler handler = event -> {
			if (!control.isDisposed()) {
				paint.run();
			}
		};
		broker.subscribe(IThemeEngine.Events.THEME_CHANGED, handler);
		control.addDisposeListener(e -> broker.unsubscribe(handler));
	}
}
