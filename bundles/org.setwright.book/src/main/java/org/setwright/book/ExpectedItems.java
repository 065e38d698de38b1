package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.ItemList.Topic;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;

/** Reads one list of what a job expects besides settings. */
final class ExpectedItems {
	private final ItemList list;
	private final ProblemList problems;
	private final List<ExpectedItem> read = new ArrayList<>();

	ExpectedItems(ItemList list, ProblemList problems) {
		this.list = list;
		this.problems = problems;
	}

	List<ExpectedItem> read(YamlNode written) {
		for (YamlNode item : written instanceof Sequence sequence ? sequence.items() : List.of(written)) {
			if (item instanceof Scalar head && fits(head)) {
				add(head, "");
			} else if (list.topic() != Topic.FINDINGS && item instanceof Mapping mapping && mapping.entries().size() == 1
					&& mapping.entries().get(0).value() instanceof Scalar words && fits(words)) {
				add(mapping.entries().get(0).key(), words.text());
			} else {
				problems.error(item.start(), what(), remedy());
			}
		}
		return read;
	}

	private String what() {
		return switch (list.topic()) {
			case CAUTIONS -> "The kind of a caution, and a part of its sentence, are expected here.";
			case START_UP -> "A part of the start-up, and words of the check, are expected here.";
			case FINDINGS -> "The name of a finding is expected here.";
		};
	}

	private String remedy() {
		return switch (list.topic()) {
			case CAUTIONS -> "Write each in a line of its own, after a dash, as \"stop: a part of the sentence\", or just \"stop\".";
			case START_UP -> "Write each in a line of its own, after a dash, as \"heating: a few words of the check\", or just \"heating\".";
			case FINDINGS -> "Write each in a line of its own, after a dash.";
		};
	}

	private static boolean fits(Scalar words) {
		return !words.saysNothing() && words.text().length() <= JobKeys.LONGEST_VALUE;
	}

	private void add(Scalar head, String words) {
		Optional<ExpectedItem> item = ItemText.read(list, head.text(), words, problems.at(head.start()));
		if (item.isEmpty()) {
			Misfit misfit = ItemText.misfit(list, head.text());
			problems.error(head.start(), misfit.what(), misfit.remedy());
		} else if (read.stream().anyMatch(item.get()::same)) {
			problems.error(head.start(), "This " + (list.topic() == Topic.START_UP ? "check" : list.topic() == Topic.CAUTIONS ? "caution" : "finding")
					+ " is written twice.", "Remove one of the two.");
		} else {
			read.add(item.get());
		}
	}
}
