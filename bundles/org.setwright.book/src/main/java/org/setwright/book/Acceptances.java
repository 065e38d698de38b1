package org.setwright.book;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;

/** Reads who accepted which new outcome of a job, when and why. */
final class Acceptances {
	static final String WHAT = "what";
	static final String WAS = "was";
	static final String NOW = "now";
	static final String ON = "date";
	static final String BY = "by";
	static final String BECAUSE = "because";
	/** In the order they are written. */
	static final List<String> KEYS = List.of(WHAT, WAS, NOW, ON, BY, BECAUSE);
	private final ProblemList problems;

	Acceptances(ProblemList problems) {
		this.problems = problems;
	}

	/** @return each acceptance under its names, as it is written */
	static Map<String, String> texts(Acceptance accepted) {
		Map<String, String> texts = new LinkedHashMap<>();
		texts.put(WHAT, accepted.what());
		texts.put(WAS, accepted.was());
		texts.put(NOW, accepted.now());
		texts.put(ON, accepted.on().toString());
		texts.put(BY, accepted.by());
		texts.put(BECAUSE, accepted.because());
		return texts;
	}

	List<Acceptance> read(YamlNode written) {
		List<Acceptance> accepted = new ArrayList<>();
		if (!(written instanceof Sequence list)) {
			problems.error(written.start(), "A list of what was accepted is expected here.", "Begin each with a dash, on a line of its own.");
			return accepted;
		}
		for (YamlNode item : list.items()) {
			if (item instanceof Mapping mapping) {
				acceptance(mapping).ifPresent(accepted::add);
			} else {
				problems.error(item.start(), "What was accepted is told by names and values, and this is neither.", remedy());
			}
		}
		return accepted;
	}

	private Optional<Acceptance> acceptance(Mapping mapping) {
		Keys keys = Keys.of(mapping, problems);
		Map<String, String> texts = new LinkedHashMap<>();
		for (YamlNode.Entry entry : keys.entries()) {
			String key = Keys.normal(entry.key().text());
			if (!KEYS.contains(key)) {
				problems.error(entry.key().start(), Misfit.quoted(entry.key().text()) + " does not belong to what was accepted.",
						Nearest.to(key, KEYS).map(n -> "Write \"" + n + "\".").orElse(remedy()));
				return Optional.empty();
			} else if (entry.value() instanceof Scalar words && !words.saysNothing() && !problems.refusedLines(words, key)) {
				texts.put(key, words.text().strip());
			}
		}
		Optional<String> missing = KEYS.stream().filter(k -> !texts.containsKey(k)).findFirst();
		if (missing.isPresent()) {
			problems.error(mapping.start(), "What was accepted lacks \"" + missing.get() + "\".", remedy());
			return Optional.empty();
		}
		return day(mapping, texts.get(ON)).map(day -> new Acceptance(texts.get(WHAT), texts.get(WAS), texts.get(NOW), day, texts.get(BY), texts.get(BECAUSE)));
	}

	private Optional<LocalDate> day(Mapping mapping, String written) {
		try {
			return Optional.of(LocalDate.parse(written));
		} catch (DateTimeParseException noDay) {
			problems.error(mapping.start(), Misfit.quoted(written) + " is no day.", "Write it as year-month-day, for example 2026-11-25.");
			return Optional.empty();
		}
	}

	private static String remedy() {
		return "Write \"what\", \"was\", \"now\", \"date\", \"by\" (who) and \"because\", each with words on one line.";
	}
}
