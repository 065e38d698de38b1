package org.setwright.editions.written;

import java.util.List;

/**
 * What a rule consists of, free of how it is laid out: blanks and line ends within are single blanks.
 *
 * @param conditions what has to hold, one for each line of a rule or filled cell of a row
 * @param outcomes what it says then, likewise
 * @param authority in small letters; empty when it states none
 * @param because why; may be empty
 * @param source may be empty
 * @param comments what stands in comments in it and directly above it; may be empty
 */
public record Parts(List<String> conditions, List<String> outcomes, String authority, String because, String source, String comments) {
	public Parts {
		conditions = List.copyOf(conditions);
		outcomes = List.copyOf(outcomes);
	}

	/** @return all conditions as one line, the same however they are broken into lines */
	public String when() {
		return String.join(" ", conditions);
	}

	/** @return all outcomes as one line, likewise */
	public String then() {
		return String.join(" ", outcomes);
	}
}
