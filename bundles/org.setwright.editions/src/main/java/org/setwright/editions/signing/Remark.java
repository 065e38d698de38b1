package org.setwright.editions.signing;

import java.time.OffsetDateTime;
import org.setwright.editions.kept.Who;

/**
 * One remark, as it stands in a file of its own. Immutable.
 *
 * @param thread the folder it stands in, which holds everything said on one matter
 * @param file its path below the book
 * @param about what it is about
 * @param edition the first digits of the edition it was written on; empty before the first
 * @param stand what it does to the matter
 * @param text what was said; may hold several lines
 */
public record Remark(String thread, String file, About about, String edition, Who by, OffsetDateTime on, Stand stand, String text) {

	/** What a remark does to the matter it is about. */
	public enum Stand {
		/** It opens it, or keeps it open. */
		OPEN("open"),
		/** It settles it. */
		SETTLED("settled");

		private final String words;

		Stand(String words) {
			this.words = words;
		}

		/** @return its word in files and for people */
		public String words() {
			return words;
		}
	}
}
