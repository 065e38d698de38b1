package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.fail;

import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.eclipse.swt.widgets.Display;

/** Lets the window work until something has happened. */
final class Waiting {
	private static final long LIMIT_NANOS = 60_000_000_000L;
	private static final int LOOK_AGAIN_MILLIS = 20;

	private Waiting() {
	}

	/** @param what is waited for, to be said when it does not come */
	static void until(BooleanSupplier happened, String what) {
		until(happened, () -> what);
	}

	static void until(BooleanSupplier happened, Supplier<String> what) {
		Display display = Display.getCurrent();
		long end = System.nanoTime() + LIMIT_NANOS;
		while (!happened.getAsBoolean()) {
			if (System.nanoTime() > end) {
				fail("waited in vain for: " + what.get());
			}
			display.timerExec(LOOK_AGAIN_MILLIS, () -> {
				// wakes the display up
			});
			if (!display.readAndDispatch()) {
				display.sleep();
			}
		}
	}

	/** Lets the window do what it has to do at present. */
	static void settle() {
		while (Display.getCurrent().readAndDispatch()) {
			// go on
		}
	}
}
