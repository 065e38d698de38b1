package org.setwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails a test during which an error was logged: silent faults surface. */
final class NothingLogged implements BeforeEachCallback, AfterEachCallback {
	private final List<IStatus> errors = new CopyOnWriteArrayList<>();
	private final ILogListener listener = (status, plugin) -> {
		if (status.getSeverity() == IStatus.ERROR) {
			errors.add(status);
		}
	};

	@Override
	public void beforeEach(ExtensionContext context) {
		errors.clear();
		Platform.addLogListener(listener);
	}

	@Override
	public void afterEach(ExtensionContext context) {
		Platform.removeLogListener(listener);
		assertEquals(List.of(), errors.stream().map(s -> s.getMessage() + " " + s.getException()).toList(), "errors were logged");
	}
}
