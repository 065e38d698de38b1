package org.setwright.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.trade.catalogue.CautionKind;

/** Reads a list of cautions that must be raised, or must not be. */
final class ExpectedCautions {
	private static final List<String> KINDS = kinds();
	private final ProblemList problems;
	private final List<ExpectedCaution> read = new ArrayList<>();

	ExpectedCautions(ProblemList problems) {
		this.problems = problems;
	}

	/** @return every kind in words, and that for any */
	static List<String> kinds() {
		List<String> kinds = new ArrayList<>(Arrays.stream(CautionKind.values()).map(CautionKind::label).toList());
		kinds.add(ExpectedCaution.ANY);
		return kinds;
	}

	List<ExpectedCaution> read(YamlNode written, boolean appears) {
		for (YamlNode item : written instanceof Sequence list ? list.items() : List.of(written)) {
			if (item instanceof Scalar kind && !kind.saysNothing()) {
				add(kind, "", appears);
			} else if (item instanceof Mapping mapping && mapping.entries().size() == 1
					&& mapping.entries().get(0).value() instanceof Scalar words && fits(words)) {
				add(mapping.entries().get(0).key(), words.text(), appears);
			} else {
				problems.error(item.start(), "The kind of a caution, and a part of its sentence, are expected here.",
						"Write each in a line of its own, after a dash, as \"stop: a part of the sentence\", or just \"stop\".");
			}
		}
		return read;
	}

	private static boolean fits(Scalar words) {
		return !words.saysNothing() && words.text().length() <= JobKeys.LONGEST_VALUE;
	}

	private void add(Scalar kind, String words, boolean appears) {
		String name = Keys.normal(kind.text());
		if (name.equals(ExpectedCaution.ANY_OTHER) && !appears && words.isEmpty()) {
			add(kind, ExpectedCaution.noOther(problems.at(kind.start())));
			return;
		}
		if (!KINDS.contains(name)) {
			problems.error(kind.start(), "There is no kind of caution " + Misfit.quoted(kind.text()) + ".",
					Nearest.to(name, KINDS).map(n -> "Write \"" + n + "\".").orElse("Write one of: " + String.join(", ", KINDS) + "."));
			return;
		}
		Optional<CautionKind> known = Arrays.stream(CautionKind.values()).filter(k -> k.label().equals(name)).findFirst();
		add(kind, new ExpectedCaution(appears, known, words, problems.at(kind.start())));
	}

	private void add(Scalar kind, ExpectedCaution caution) {
		if (read.stream().anyMatch(caution::same)) {
			problems.error(kind.start(), "This caution is written twice.", "Remove one of the two.");
		} else {
			read.add(caution);
		}
	}
}
