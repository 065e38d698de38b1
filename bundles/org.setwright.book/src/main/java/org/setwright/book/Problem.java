package org.setwright.book;

/**
 * Something wrong in a rule book, said so that a technician can mend it.
 *
 * @param severity whether anything may still run
 * @param at where
 * @param what what is wrong and why it matters, one sentence
 * @param remedy what to do, one sentence
 */
public record Problem(Severity severity, Position at, String what, String remedy) {

	/** How bad. */
	public enum Severity {
		/** Nothing runs until it is mended. */
		ERROR,
		/** It runs, but somebody should look. */
		WARNING
	}

	/** @return an error */
	public static Problem error(Position at, String what, String remedy) {
		return new Problem(Severity.ERROR, at, what, remedy);
	}

	/** @return a warning */
	public static Problem warning(Position at, String what, String remedy) {
		return new Problem(Severity.WARNING, at, what, remedy);
	}

	/** @return for example {@code rules/valve.drl:12:5: There is no fact "OutdorUnit". Write OutdoorUnit.} */
	@Override
	public String toString() {
		return at + ": " + what + " " + remedy;
	}
}
