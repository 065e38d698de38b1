package org.setwright.book;

import java.util.List;
import java.util.Optional;

/**
 * Something wrong in a rule book, said so that a technician can mend it.
 *
 * @param severity whether anything may still run
 * @param at where
 * @param what what is wrong and why it matters, one sentence
 * @param remedy what to do, one sentence
 * @param mend what to write, where that is known exactly enough to be done with a key
 */
public record Problem(Severity severity, Position at, String what, String remedy, Optional<Mend> mend) {
	/** A problem that only a person can mend. */
	public Problem(Severity severity, Position at, String what, String remedy) {
		this(severity, at, what, remedy, Optional.empty());
	}

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

	/** @return the same, which {@code mend} would mend */
	public Problem with(Mend mend) {
		return new Problem(severity, at, what, remedy, Optional.of(mend));
	}

	/** @return the same, mended by any of {@code instead} in place of {@code written}; unchanged when there is none */
	public Problem instead(String written, List<String> instead) {
		return instead.isEmpty() ? this : with(new Mend.Replace(written, instead));
	}

	/** @return for example {@code rules/valve.drl:12:5: There is no fact "OutdorUnit". Write OutdoorUnit.} */
	@Override
	public String toString() {
		return at + ": " + what + " " + remedy;
	}
}
