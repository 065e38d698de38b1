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
 * @param at where it stands in the file
 */
public record ExpectedCaution(boolean appears, Optional<CautionKind> kind, String words, Position at) {
	/** Instead of a kind: whatever kind it is. */
	static final String ANY = "any";

	public ExpectedCaution {
		words = words.strip().replaceAll("\\s+", " ");
	}

	/** @return whether a caution of {@code otherKind} with {@code sentence} is the one meant */
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
		return kind.map(CautionKind::label).orElse(ANY);
	}
}
