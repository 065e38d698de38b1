package org.setwright.workbench.jobs;

import org.setwright.workbench.rows.SearchWords;

/**
 * One job in the list, as shown.
 *
 * @param path its file below the book folder
 * @param standing how it stands against what is expected of it
 * @param words the same in words
 * @param progress how far its settings are decided, in words; empty when it does not run
 * @param searched everything a search looks at, lower case
 */
public record JobRow(String path, String name, Standing standing, String words, String progress, String searched) {

	/** How a job stands against what is expected of it. */
	public enum Standing {
		/** Everything expected came true. */
		AS_EXPECTED,
		/** Something comes to another value than expected. */
		DIFFERS,
		/** Nothing is expected of it. */
		NOTHING_EXPECTED,
		/** It cannot be run: its file or the rules have mistakes. */
		DOES_NOT_RUN
	}

	/** @return whether every word of {@code search} occurs in it */
	public boolean matches(String search) {
		return SearchWords.allIn(search, searched);
	}
}
