package org.setwright.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The lines typed at earlier times, kept with the window's own notes. */
final class TypedBefore {
	private static final String NODE = "org.setwright.workbench/bench"; //$NON-NLS-1$
	private static final String COUNT = "lines"; //$NON-NLS-1$

	private TypedBefore() {
	}

	static Remembered load() {
		IEclipsePreferences notes = InstanceScope.INSTANCE.getNode(NODE);
		List<String> lines = new ArrayList<>();
		int count = Math.min(Remembered.MOST, notes.getInt(COUNT, 0));
		for (int i = 0; i < count; i++) {
			lines.add(notes.get(Integer.toString(i), "")); //$NON-NLS-1$
		}
		return new Remembered(lines);
	}

	static void save(Remembered remembered) {
		IEclipsePreferences notes = InstanceScope.INSTANCE.getNode(NODE);
		List<String> lines = remembered.all();
		for (int i = 0; i < lines.size(); i++) {
			notes.put(Integer.toString(i), lines.get(i));
		}
		notes.putInt(COUNT, lines.size());
		try {
			notes.flush();
		} catch (BackingStoreException notKept) {
			ILog.of(TypedBefore.class).warn("typed lines are not remembered", notKept); //$NON-NLS-1$
		}
	}
}
