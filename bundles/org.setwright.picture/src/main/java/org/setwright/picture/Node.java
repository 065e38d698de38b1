package org.setwright.picture;

import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.trade.catalogue.JobField;

/**
 * One thing in a derivation.
 *
 * @param sort what it is; every sort has a shape of its own
 * @param title its name
 * @param text what it says: an answer, an authority; may be empty
 * @param faint whether it does not count in the end: outranked, or not made
 * @param field where it stands in the job, if it does
 * @param at where it is written in the rules, if it is
 */
public record Node(Sort sort, String title, String text, boolean faint, Optional<JobField> field, Optional<Position> at) {

	/** What a node is, from left to right. */
	public enum Sort {
		ANSWER("answer"), CALCULATED("calculated"), FINDING("finding"), RULE("rule"), PROPOSAL("proposal"), SETTING("setting");

		private final String word;

		Sort(String word) {
			this.word = word;
		}

		/** @return for people */
		public String word() {
			return word;
		}
	}

	/** @return everything about it in one sentence, for those who hear the picture */
	public String spoken() {
		return sort.word() + " " + title + (text.isEmpty() ? "" : ": " + text);
	}
}
