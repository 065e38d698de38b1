package org.setwright.book;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the word somebody probably meant. */
public final class Nearest {
	private static final int LONGEST = 60;

	private Nearest() {
	}

	/**
	 * @param written what stands in the file
	 * @param candidates the right words
	 * @return the candidate so near to {@code written} that it was probably meant, or empty. Near is: the same but for
	 *         case, blanks and dashes; or at most one slip (a letter left out, added, changed, or two swapped) for every
	 *         three letters; or the only candidate that holds {@code written} as whole words.
	 */
	public static Optional<String> to(String written, Collection<String> candidates) {
		String wanted = letters(written);
		if (wanted.length() < 2 || written.length() > LONGEST) {
			return Optional.empty();
		}
		String best = null;
		int fewest = wanted.length() / 3 + 1;
		for (String candidate : candidates) {
			int slips = slips(wanted, letters(candidate));
			if (slips < fewest) {
				best = candidate;
				fewest = slips;
			}
		}
		return best != null ? Optional.of(best) : onlyHolder(written, candidates);
	}

	/**
	 * @return at most {@code most} candidates that may have been meant, the likeliest first: what {@link #to} says, others as
	 *         near, and those that share most whole words with {@code written}
	 */
	public static List<String> several(String written, Collection<String> candidates, int most) {
		String wanted = letters(written);
		if (wanted.length() < 2 || written.length() > LONGEST) {
			return List.of();
		}
		int limit = wanted.length() / 3 + 1;
		Set<String> all = new LinkedHashSet<>(to(written, candidates).stream().toList());
		candidates.stream().filter(c -> slips(wanted, letters(c)) < limit).sorted(Comparator.comparingInt(c -> slips(wanted, letters(c))))
				.forEach(all::add);
		List<String> words = List.of(words(written).strip().split(" "));
		candidates.stream().filter(c -> shared(words, c) > 0).sorted(Comparator.comparingLong(c -> -shared(words, c))).forEach(all::add);
		return all.stream().limit(most).toList();
	}

	/** How many letters the words of three letters or more have that stand in both. */
	private static long shared(List<String> words, String candidate) {
		return Arrays.stream(words(candidate).strip().split(" ")).filter(w -> w.length() > 2 && words.contains(w)).mapToInt(String::length).sum();
	}

	private static Optional<String> onlyHolder(String written, Collection<String> candidates) {
		String words = words(written);
		var holders = candidates.stream().filter(c -> words(c).contains(words)).distinct().limit(2).toList();
		return words.length() > 4 && holders.size() == 1 ? Optional.of(holders.get(0)) : Optional.empty();
	}

	private static String words(String text) {
		return " " + text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ") + " ";
	}

	private static String letters(String text) {
		return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "");
	}

	/** The fewest single slips that turn one into the other (optimal string alignment). */
	static int slips(String a, String b) {
		int[] beforeLast = new int[b.length() + 1];
		int[] last = new int[b.length() + 1];
		for (int j = 0; j <= b.length(); j++) {
			last[j] = j;
		}
		for (int i = 1; i <= a.length(); i++) {
			int[] row = new int[b.length() + 1];
			row[0] = i;
			for (int j = 1; j <= b.length(); j++) {
				int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
				row[j] = Math.min(change, Math.min(last[j], row[j - 1]) + 1);
				if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
					row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
				}
			}
			beforeLast = last;
			last = row;
		}
		return last[b.length()];
	}
}
