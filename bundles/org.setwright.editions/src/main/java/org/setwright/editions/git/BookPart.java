package org.setwright.editions.git;

import java.util.List;
import org.setwright.book.ShopSettings;

/** Which files below the folder of a book belong to it. Whatever else lies there is left alone. */
public final class BookPart {
	/** Where remarks are kept. */
	public static final String REMARKS = "remarks";
	private static final List<String> TOP = List.of("book.yaml", ShopSettings.FILE);
	static final List<String> FOLDERS = List.of("rules", "tables", "phrases", "jobs", REMARKS);
	private static final List<String> WORDS_ALONE = List.of(REMARKS, "README.md");

	private BookPart() {
	}

	/** @param path below the book @return whether an edition holds it */
	public static boolean is(String path) {
		String name = path.substring(path.lastIndexOf('/') + 1);
		if (name.startsWith(".") || name.endsWith("~")) {
			return false;
		}
		return isTop(path) || path.contains("/") && FOLDERS.contains(path.substring(0, path.indexOf('/')));
	}

	private static boolean isTop(String path) {
		return TOP.contains(path) || path.equals("README.md");
	}

	/** @param name of a file or folder that lies directly in the book @return whether what it holds makes an edition another one */
	static boolean counts(String name) {
		return !WORDS_ALONE.contains(name) && (TOP.contains(name) || FOLDERS.contains(name));
	}
}
