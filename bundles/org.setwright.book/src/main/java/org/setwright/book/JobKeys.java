package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import org.setwright.trade.catalogue.Catalogue;

/** The words of a job file that do not come from the catalogue. */
final class JobKeys {
	static final String JOB = "job";
	static final String NOTES = "notes";
	static final String NOT_FITTED = "not fitted";
	static final String EXPECT = "expect";
	static final String ACCEPTED = "accepted";
	static final List<String> ALL = List.of(JOB, NOTES, NOT_FITTED, EXPECT, ACCEPTED);

	/** Nobody has looked. */
	static final String UNKNOWN = "unknown";
	/** Somebody made sure there is none. */
	static final String NONE = "none";
	/** There is one, and nothing more is known of it. */
	static final String FITTED = "fitted";
	/** In {@link #NOT_FITTED}: every kind the file does not mention. */
	static final String EVERYTHING_ELSE = "everything else";

	static final int LONGEST_NAME = 200;
	/** No single value may be longer; notes may. */
	static final int LONGEST_VALUE = 500;

	private JobKeys() {
	}

	/** @return every name a job file may begin a line with, in the order they are written */
	static List<String> inOrder(Catalogue catalogue) {
		List<String> names = new ArrayList<>(List.of(JOB, NOTES));
		catalogue.kinds().stream().filter(k -> !k.calculated()).map(k -> Keys.normal(k.key())).forEach(names::add);
		names.addAll(List.of(NOT_FITTED, EXPECT, ACCEPTED));
		return names;
	}

	static boolean fitsOnALine(String text) {
		return text.strip().length() <= LONGEST_NAME && text.strip().chars().noneMatch(c -> c == '\n' || c == '\r');
	}

	static boolean says(String word, String text) {
		return Keys.normal(text).equals(word);
	}
}
