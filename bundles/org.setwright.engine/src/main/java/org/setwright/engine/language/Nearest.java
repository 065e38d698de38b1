package org.setwright.engine.language;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word somebody most likely meant. */
public final class Nearest {
	private Nearest() {
	}

	/** @return the candidate closest to {@code word}, when it is close enough to be a slip of the pen */
	public static Optional<String> to(String word, Collection<String> candidates) {
		int furthest = Math.max(2, word.length() / 3);
		return candidates.stream().min(Comparator.comparingInt(c -> distance(word, c)))
				.filter(c -> distance(word, c) <= furthest);
	}

	private static int distance(String a, String b) {
		int[] row = new int[b.length() + 1];
		for (int j = 0; j <= b.length(); j++) {
			row[j] = j;
		}
		for (int i = 1; i <= a.length(); i++) {
			int corner = row[0];
			row[0] = i;
			for (int j = 1; j <= b.length(); j++) {
				int above = row[j];
				int same = Character.toLowerCase(a.charAt(i - 1)) == Character.toLowerCase(b.charAt(j - 1)) ? 0 : 1;
				row[j] = Math.min(corner + same, Math.min(above, row[j - 1]) + 1);
				corner = above;
			}
		}
		return row[b.length()];
	}
}
