package org.setwright.editions.compare;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.setwright.editions.written.WrittenRule;

/** How much two rules have in common: the share of words that both use. */
final class Likeness {
	private Likeness() {
	}

	private static final double SAME_WORDS = 0.5;

	/** @return from 0, nothing, to 1, all of it: of their conditions and outcomes */
	static double of(WrittenRule one, WrittenRule other) {
		return of(one.parts().when() + " " + one.parts().then(), other.parts().when() + " " + other.parts().then());
	}

	/** @return whether two rules with different names and different content may still be the same, by their names or reasons */
	static boolean toldAlike(WrittenRule one, WrittenRule other) {
		return of(one.parts().because(), other.parts().because()) >= SAME_WORDS || of(one.name(), other.name()) >= SAME_WORDS;
	}

	private static double of(String one, String other) {
		Map<String, Integer> left = words(one);
		Map<String, Integer> right = words(other);
		int all = left.values().stream().mapToInt(n -> n).sum() + right.values().stream().mapToInt(n -> n).sum();
		int shared = 0;
		for (Map.Entry<String, Integer> word : left.entrySet()) {
			shared += Math.min(word.getValue(), right.getOrDefault(word.getKey(), 0));
		}
		return all == 0 ? 1 : 2.0 * shared / all;
	}

	private static Map<String, Integer> words(String text) {
		Map<String, Integer> words = new HashMap<>();
		for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}_]+")) {
			if (!word.isEmpty()) {
				words.merge(word, 1, Integer::sum);
			}
		}
		return words;
	}
}
