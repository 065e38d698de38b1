package org.setwright.check.strength;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.setwright.book.ExpectedCheck;
import org.setwright.book.JobCase;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/**
 * Whether the words by which a job expects start-up checks could have to do with what a setting comes to, because a check shows
 * it. When in doubt they could.
 */
final class Readings {
	/** How a check may show a setting that nobody has decided. */
	private static final List<String> UNDECIDED = List.of("not needed here", "disputed (", "a gap (no rule gives it), so do not start this",
			"not known to be needed, so do not start this");
	private final List<String> words;
	private final Map<Setting, Boolean> known = new ConcurrentHashMap<>();

	Readings(JobCase job) {
		words = job.items().stream().filter(ExpectedCheck.class::isInstance).map(ExpectedCheck.class::cast).filter(c -> !c.byRule())
				.map(c -> ExpectedCheck.plain(c.words())).filter(w -> !w.isEmpty()).toList();
	}

	/** @return whether something the job expects could be met or missed by {@code setting} alone */
	boolean matter(Setting setting) {
		return !words.isEmpty() && known.computeIfAbsent(setting, this::shared);
	}

	private boolean shared(Setting setting) {
		List<Value> listed = setting.domain().listed();
		boolean numbers = listed.isEmpty() || setting.domain() instanceof Domain.Whole;
		return words.stream().anyMatch(w -> numbers && w.chars().anyMatch(Character::isDigit)
				|| Stream.concat(UNDECIDED.stream(), listed.stream().map(v -> ExpectedCheck.plain(v.text()))).anyMatch(r -> overlap(w, r)));
	}

	/** Whether {@code words} could stand across {@code reading} or one of its ends. */
	private static boolean overlap(String words, String reading) {
		return reading.contains(words) || IntStream.range(0, words.length()).filter(i -> i == 0 || !letter(words, i - 1)).mapToObj(words::substring)
				.anyMatch(tail -> reading.startsWith(tail) || tail.startsWith(reading))
				|| IntStream.rangeClosed(1, words.length()).filter(i -> i == words.length() || !letter(words, i)).mapToObj(i -> words.substring(0, i))
						.anyMatch(reading::endsWith);
	}

	private static boolean letter(String words, int at) {
		return Character.isLetterOrDigit(words.charAt(at));
	}
}
