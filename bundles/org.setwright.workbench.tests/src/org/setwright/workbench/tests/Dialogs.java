package org.setwright.workbench.tests;

import java.util.Arrays;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.setwright.workbench.look.Spoken;

/** Dialogs as a person answers them. A dialog has the window's thread to itself, so what is to be done in it waits there. */
final class Dialogs {
	private static final int LOOK_AGAIN_MILLIS = 50;

	private Dialogs() {
	}

	/** Does {@code then} as soon as a dialog of this title is open. */
	static void whenOpen(String title, Consumer<Shell> then) {
		Display display = Display.getCurrent();
		display.timerExec(LOOK_AGAIN_MILLIS, new Runnable() {
			@Override
			public void run() {
				Arrays.stream(display.getShells()).filter(s -> s.getText().equals(title) && s.isVisible()).findFirst()
						.ifPresentOrElse(shell -> orClosed(shell, then), () -> display.timerExec(LOOK_AGAIN_MILLIS, this));
			}
		});
	}

	/** What fails ends the dialog, too: else the test would wait for it for ever. */
	private static void orClosed(Shell shell, Consumer<Shell> then) {
		try {
			then.accept(shell);
		} catch (RuntimeException | Error failed) {
			shell.close();
			throw failed;
		}
	}

	static void press(Shell shell, String label) {
		find(shell, Button.class, b -> b.getText().replace("&", "").equals(label)).notifyListeners(SWT.Selection, new Event());
	}

	/** @return the field a screen reader calls {@code name} */
	static Text text(Shell shell, String name) {
		return find(shell, Text.class, t -> name.equals(t.getData(Spoken.KEY)));
	}

	/** @return the list a screen reader calls {@code name} */
	static Combo combo(Shell shell, String name) {
		return find(shell, Combo.class, c -> name.equals(c.getData(Spoken.KEY)));
	}

	/** Writes into the one field of a dialog that asks for nothing else. */
	static void type(Shell shell, String words) {
		find(shell, Text.class, t -> (t.getStyle() & SWT.READ_ONLY) == 0).setText(words);
	}

	/** @return whether this button can be pressed */
	static boolean enabled(Shell shell, String label) {
		return find(shell, Button.class, b -> b.getText().replace("&", "").equals(label)).isEnabled();
	}

	/** @return whether some label, or the line at the top, says {@code words} */
	static boolean says(Shell shell, String words) {
		return find(shell, Label.class, l -> l.getText().contains(words)) != null
				|| find(shell, Text.class, t -> (t.getStyle() & SWT.READ_ONLY) != 0 && t.getText().contains(words)) != null;
	}

	private static <T extends Control> T find(Composite in, Class<T> type, Predicate<T> wanted) {
		for (Control child : in.getChildren()) {
			if (type.isInstance(child) && wanted.test(type.cast(child))) {
				return type.cast(child);
			}
			T found = child instanceof Composite inner ? find(inner, type, wanted) : null;
			if (found != null) {
				return found;
			}
		}
		return null;
	}
}
