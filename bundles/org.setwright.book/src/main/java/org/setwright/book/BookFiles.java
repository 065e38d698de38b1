package org.setwright.book;

import java.util.List;

/** Where the files of a book come from. */
interface BookFiles {

	/**
	 * @param folder "rules", "tables" or "jobs"
	 * @param ending of the files wanted, with its dot
	 * @return their paths below the book, sorted; empty when there is no such folder
	 */
	List<String> list(String folder, String ending);

	/** @param path below the book @return whether something stands there, readable or not */
	boolean has(String path);

	/** @param path below the book @return its text, or why it cannot be read */
	FileContents read(String path);
}
