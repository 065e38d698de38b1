package org.setwright.workbench.welcome;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** The rule book that comes with the program, to be copied and changed. */
public final class StarterBook {
	private static final String ROOT = "starter"; //$NON-NLS-1$

	private StarterBook() {
	}

	/**
	 * Copies the book.
	 *
	 * @param folder to be made; must not exist, or be empty
	 * @throws FileAlreadyExistsException when there is something in {@code folder}; nothing is changed then
	 * @throws IOException when it cannot be written
	 */
	public static void copyTo(Path folder) throws IOException {
		if (Files.exists(folder) && !isEmpty(folder)) {
			throw new FileAlreadyExistsException(folder.toString());
		}
		Files.createDirectories(folder);
		for (URL entry : entries()) {
			copy(entry, folder);
		}
	}

	private static boolean isEmpty(Path folder) throws IOException {
		if (!Files.isDirectory(folder)) {
			return false;
		}
		try (var inside = Files.list(folder)) {
			return inside.findAny().isEmpty();
		}
	}

	private static List<URL> entries() throws IOException {
		Bundle bundle = FrameworkUtil.getBundle(StarterBook.class);
		var entries = bundle.findEntries(ROOT, "*", true); //$NON-NLS-1$
		if (entries == null) {
			throw new IOException("the starter book is missing from this installation"); //$NON-NLS-1$
		}
		return Collections.list(entries);
	}

	private static void copy(URL entry, Path folder) throws IOException {
		String path = entry.getPath();
		String below = path.substring(path.indexOf('/' + ROOT + '/') + ROOT.length() + 2);
		Path target = folder.resolve(below).normalize();
		if (path.endsWith("/")) { //$NON-NLS-1$
			Files.createDirectories(target);
		} else {
			Files.createDirectories(target.getParent());
			try (InputStream in = entry.openStream()) {
				Files.copy(in, target);
			}
		}
	}
}
