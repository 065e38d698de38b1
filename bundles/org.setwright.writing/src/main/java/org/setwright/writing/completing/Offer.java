package org.setwright.writing.completing;

import java.util.List;
import java.util.Locale;

/**
 * Something that may be written next.
 *
 * @param word as it is written
 * @param remark for the list, after the word; may be empty
 * @param meaning the trade's meaning and what may be written, in whole sentences; may be empty
 */
public record Offer(String word, String remark, String meaning) {

	/**
	 * What may stand at a place.
	 *
	 * @param start where it would begin; what stands from there to the cursor has been typed already
	 * @param offers only those that begin with what has been typed, whatever the capitals
	 */
	public record Offered(int start, List<Offer> offers) {
		/** Nothing to offer. */
		public static final Offered NOTHING = new Offered(0, List.of());

		public Offered {
			offers = List.copyOf(offers);
		}

		static Offered of(int start, String typed, List<Offer> all) {
			String begun = typed.strip().toLowerCase(Locale.ROOT);
			return new Offered(start, all.stream().filter(o -> o.word().toLowerCase(Locale.ROOT).startsWith(begun)).toList());
		}
	}
}
