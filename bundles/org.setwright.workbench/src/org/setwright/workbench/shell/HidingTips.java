package org.setwright.workbench.shell;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;

/**
 * Closes the tip of a list when a key gives a command. On Linux a dialog that opens while a tip is to be seen takes letters only:
 * neither Tab nor Esc nor Enter reach it.
 */
final class HidingTips {
	private static final int TIP = SWT.ON_TOP | SWT.NO_FOCUS;

	private HidingTips() {
	}

	/** From now on, until {@code display} is disposed. Begin before the platform listens for keys, so that it finds the tip gone. */
	static void on(Display display) {
		display.addFilter(SWT.KeyDown, e -> {
			// texts have hovers that keys are for
			if (command(e) && !(display.getFocusControl() instanceof StyledText)) {
				hide(display);
			}
		});
	}

	private static boolean command(Event key) {
		boolean alone = key.keyCode == SWT.CTRL || key.keyCode == SWT.ALT || key.keyCode == SWT.SHIFT || key.keyCode == SWT.COMMAND;
		boolean function = key.keyCode >= SWT.F1 && key.keyCode <= SWT.F20;
		return !alone && (function || (key.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) != 0);
	}

	private static void hide(Display display) {
		for (Shell shell : display.getShells()) {
			if ((shell.getStyle() & TIP) == TIP && shell.isVisible()) {
				shell.close();
			}
		}
	}
}
