package org.setwright.workbench.rows;

import java.util.Arrays;
import java.util.Locale;

/** What a person types to find lines. */
public final class SearchWords {
	private SearchWords() {
	}

	/** @param text lower case @return whether every word of {@code search} occurs in {@code text}, whatever its case; blank words always do */
	public static boolean allIn(String search, String text) {
		return Arrays.stream(search.strip().toLowerCase(Locale.ROOT).split("\\s+")).allMatch(text::contains); //$NON-NLS-1$
	}
}
