package org.setwright.engine.explaining;

import java.util.Set;

/** Puts a reason, which somebody wrote as a sentence of its own, behind "because" where its first word may be small. */
final class Openers {
	private static final Set<String> SMALL = Set.of("a", "above", "after", "all", "an", "any", "as", "at", "because", "before", "behind", "below",
			"between", "both", "by", "during", "each", "either", "even", "every", "everything", "few", "fewer", "for", "from", "half", "here",
			"his", "how", "if", "in", "it", "its", "less", "many", "more", "most", "much", "nearly", "neither", "no", "nobody", "not", "nothing", "often",
			"on", "once", "one", "only", "other", "our", "over", "people", "several", "some", "somebody", "such", "that", "the", "their", "then",
			"there", "these", "they", "this", "those", "three", "to", "too", "two", "under", "until", "we", "what", "when", "where", "which", "while",
			"with", "within", "without", "you");

	private Openers() {
	}

	/** @return ", because ..." with a full stop, or a sentence of its own where the first word may be a name */
	static String because(String reason) {
		String first = reason.split("[ ,;:]", 2)[0];
		boolean small = !first.isEmpty() && SMALL.contains(Character.toLowerCase(first.charAt(0)) + first.substring(1));
		String closed = reason.matches("(?s).*[.!?]") ? reason : reason + ".";
		return small ? ", because " + Character.toLowerCase(closed.charAt(0)) + closed.substring(1) : ". The reason: " + closed;
	}
}
