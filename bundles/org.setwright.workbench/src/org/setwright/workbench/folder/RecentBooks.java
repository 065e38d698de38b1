package org.setwright.workbench.folder;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The rule books opened lately, the latest first. */
public final class RecentBooks {
	private static final int MOST = 8;
	private static final String KEY = "recentBooks"; //$NON-NLS-1$
	private final IEclipsePreferences notes;

	/** Reads the window's own notes. */
	public RecentBooks() {
		this(InstanceScope.INSTANCE.getNode("org.setwright.workbench")); //$NON-NLS-1$
	}

	RecentBooks(IEclipsePreferences notes) {
		this.notes = notes;
	}

	/** @return the folders that are still there, the latest first */
	public List<Path> list() {
		return notes.get(KEY, "").lines().filter(l -> !l.isBlank()).flatMap(l -> path(l).stream()) //$NON-NLS-1$
				.filter(Files::isDirectory).toList();
	}

	/** Notes that {@code folder} has been opened now. */
	public void opened(Path folder) {
		List<Path> books = new ArrayList<>(list());
		books.remove(folder);
		books.add(0, folder);
		notes.put(KEY, books.stream().limit(MOST).map(Path::toString).collect(Collectors.joining("\n"))); //$NON-NLS-1$
		try {
			notes.flush();
		} catch (BackingStoreException notKept) {
			// the list is a convenience; the book is open all the same
		}
	}

	private static Optional<Path> path(String line) {
		try {
			return Optional.of(Path.of(line));
		} catch (InvalidPathException written) {
			return Optional.empty();
		}
	}
}
