package org.setwright.editions.compare;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.setwright.editions.written.Parts;
import org.setwright.editions.written.WrittenRule;

/** How much two rules have in common: the share of words that both use. */
final class Likeness {
	private Likeness() {
	}

	/** @return from 0, nothing, to 1, all of it */
	static double of(WrittenRule one, WrittenRule other) {
		Map<String, Integer> left = words(one.parts());
		Map<String, Integer> right = words(other.parts());
		int all = left.values().stream().mapToInt(n -> n).sum() + right.values().stream().mapToInt(n -> n).sum();
		int shared = 0;
		for (Map.Entry<String, Integer> word : left.entrySet()) {
			shared += Math.min(word.getValue(), right.getOrDefault(word.getKey(), 0));
		}
		return all == 0 ? 1 : 2.0 * shared / all;
	}

	private static Map<String, Integer> words(Parts parts) {
		Map<String, Integer> words = new HashMap<>();
		for (String word : (parts.when() + " " + parts.then() + " " + parts.because()).toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}_]+")) {
			if (!word.isEmpty()) {
				words.merge(word, 1, Integer::sum);
			}
		}
		return words;
	}
}
