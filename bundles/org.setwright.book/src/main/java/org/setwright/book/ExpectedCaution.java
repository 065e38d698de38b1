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
public record ExpectedCaution(boolean appears, Optional<CautionKind> kind, String words, boolean other, Position at) implements ExpectedItem {
	public ExpectedCaution {
		words = ExpectedItem.onALine(words);
	}

	/** One that is named by kind, words or both. */
	public ExpectedCaution(boolean appears, Optional<CautionKind> kind, String words, Position at) {
		this(appears, kind, words, false, at);
	}

	/** For a caution that is named by kind and words. @return whether a caution of {@code otherKind} with {@code sentence} is the one meant */
	public boolean means(CautionKind otherKind, String sentence) {
		return kind.filter(k -> k != otherKind).isEmpty()
				&& ExpectedItem.onALine(sentence).toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
	}

	@Override
	public ItemList list() {
		return appears ? ItemList.CAUTIONS : ItemList.NO_CAUTIONS;
	}

	@Override
	public String head() {
		return other ? ANY_OTHER : kind.map(CautionKind::label).orElse(ANY);
	}

	@Override
	public ExpectedCaution in(ItemList list) {
		return new ExpectedCaution(list.appears(), kind, words, other, at);
	}
}
