package org.setwright.book;

import java.time.LocalDate;

/**
 * A note in a job file that somebody accepted a new outcome. Its words are history: they are not checked against the
 * catalogue, so that a setting may be renamed later.
 *
 * @param what the setting or caution it is about
 * @param was what was expected before
 * @param now what is expected since
 * @param on the day
 * @param by who accepted it
 * @param because why, in a sentence
 */
public record Acceptance(String what, String was, String now, LocalDate on, String by, String because) {
	public Acceptance {
		for (String words : new String[] { what, was, now, by, because }) {
			if (words.isBlank() || words.chars().anyMatch(c -> c == '\n' || c == '\r')) {
				throw new IllegalArgumentException("an acceptance is told in words on one line each");
			}
		}
	}
}
