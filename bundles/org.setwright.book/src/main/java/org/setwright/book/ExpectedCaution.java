package org.setwright.book;

import java.util.Locale;
import java.util.Optional;
import org.setwright.trade.catalogue.CautionKind;

/**
 * A caution that a job case expects to be raised, or not to be.
 *
 * @param appears whether it must be raised; else it must not
 * @param kind how serious it is; empty for any
 * @param words part of its sentence, whatever the capitals; empty for any sentence
 * @param other whether every caution is meant that the job does not expect to be raised
 * @param at where it stands in the file
 */
public record ExpectedCaution(boolean appears, Optional<CautionKind> kind, String words, boolean other, Position at) {
	/** Instead of a kind: whatever kind it is. */
	static final String ANY = "any";
	/** Instead of a kind: whatever is not expected. */
	static final String ANY_OTHER = "any other";

	public ExpectedCaution {
		words = words.strip().replaceAll("\\s+", " ");
	}

	/** One that is named by kind, words or both. */
	public ExpectedCaution(boolean appears, Optional<CautionKind> kind, String words, Position at) {
		this(appears, kind, words, false, at);
	}

	/** @return that no caution is raised but those expected */
	public static ExpectedCaution noOther(Position at) {
		return new ExpectedCaution(false, Optional.empty(), "", true, at);
	}

	/** For a caution that is named by kind and words. @return whether a caution of {@code otherKind} with {@code sentence} is the one meant */
	public boolean means(CautionKind otherKind, String sentence) {
		return kind.filter(k -> k != otherKind).isEmpty()
				&& sentence.replaceAll("\\s+", " ").toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
	}

	/** @return for example {@code stop: line voltage at the wall} */
	public String text() {
		return kindText() + (words.isEmpty() ? "" : ": " + words);
	}

	/** @return whether {@code other} says the same, wherever it stands */
	public boolean same(ExpectedCaution other) {
		return appears == other.appears && text().equals(other.text());
	}

	/** @return the opposite expectation of the same caution */
	public ExpectedCaution opposite() {
		return new ExpectedCaution(!appears, kind, words, at);
	}

	String kindText() {
		return other ? ANY_OTHER : kind.map(CautionKind::label).orElse(ANY);
	}
}
