package org.setwright.engine.change;

import java.util.List;

/**
 * What a search for changes came to.
 *
 * @param found the smallest ones, those possible on site first, and fewer changes before more
 * @param largest no more changes than this at once were tried
 * @param whole whether everything up to there was tried; false when the search was ended before
 */
public record Alternatives(List<Alternative> found, int largest, boolean whole) {
	/** Nothing has to change. */
	public static final Alternatives NONE_NEEDED = new Alternatives(List.of(), 0, true);

	public Alternatives {
		found = List.copyOf(found);
	}

	/**
	 * @param goal what was asked for: "the rule would speak"
	 * @return in a sentence what is to be known when nothing was found, or empty when something was
	 */
	public String nothing(String goal) {
		return !found.isEmpty() || largest == 0 ? ""
				: whole ? "No change of up to " + largest + " answers or facts was found by which " + goal + "; larger ones were not tried."
						: "Nothing found so far by which " + goal + "; the search was ended before it had tried everything.";
	}
}
