package org.setwright.editions.git;

import java.util.Map;
import org.setwright.editions.kept.NotDone;

/** The files of a book at one moment. Immutable, and safe for many threads. */
public interface Content {

	/** @return a name of what each file holds, by its path below the book, sorted; equal names mean equal bytes */
	Map<String, String> names();

	/** @param path one of the files @return its bytes */
	byte[] bytes(String path) throws NotDone;
}
