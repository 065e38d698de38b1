package org.setwright.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job;

/** Writes a job file from nothing, in the order of the catalogue. */
final class FreshJob {
	private static final int LINE = 100;
	private static final String INDENT = "  ";
	private final Catalogue catalogue;
	private final StringBuilder text = new StringBuilder();

	FreshJob(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	String text(JobCase job) {
		line(JobKeys.JOB, YamlWords.of(job.name(), false));
		String notes = job.notes().stripTrailing();
		if (!notes.isEmpty()) {
			line(JobKeys.NOTES, notes(notes));
		}
		List<String> absent = new ArrayList<>();
		for (FactKind kind : catalogue.kinds()) {
			Job.Entry entry = job.job().entry(kind);
			if (kind.calculated()) {
				continue;
			} else if (entry.presence() == Job.Presence.NONE) {
				absent.add(kind.label());
			} else if (entry.presence() == Job.Presence.PRESENT) {
				present(kind, entry.facts());
			}
		}
		if (!absent.isEmpty()) {
			notFitted(absent);
		}
		expected(job);
		if (!job.accepted().isEmpty()) {
			text.append(JobKeys.ACCEPTED).append(":\n");
			job.accepted().forEach(a -> text.append(INDENT).append("- ").append(joined(Acceptances.texts(a), "\n" + INDENT + INDENT, false)).append('\n'));
		}
		return text.toString();
	}

	private void expected(JobCase job) {
		if (job.expectations() > 0) {
			text.append(JobKeys.EXPECT).append(":\n");
		}
		job.expected().forEach((setting, expected) -> line(INDENT + setting.label(), ExpectationText.written(expected, false)));
		for (ItemList list : ItemList.values()) {
			items(list, job.items(list));
		}
	}

	private void items(ItemList list, List<ExpectedItem> items) {
		if (!items.isEmpty()) {
			text.append(INDENT).append(list.key()).append(":\n");
			items.forEach(c -> text.append(INDENT).append(INDENT).append("- ").append(ExpectEditor.written(c, false)).append('\n'));
		}
	}

	private void line(String key, String value) {
		text.append(key).append(": ").append(value).append('\n');
	}

	/** On lines of their own when that reads back the same, else on one line in quotes. */
	private static String notes(String notes) {
		if (notes.indexOf('\n') < 0) {
			return notes.length() > LINE && YamlWords.folds(notes) ? YamlWords.folded(notes, INDENT, LINE) : YamlWords.of(notes, false);
		}
		boolean lines = notes.lines().allMatch(l -> l.isEmpty() || YamlWords.folds(l)) && notes.indexOf('\r') < 0 && !notes.startsWith("\n");
		return lines ? YamlWords.onLines(notes, INDENT) : YamlWords.doubleQuoted(notes);
	}

	private void present(FactKind kind, List<Fact> facts) {
		if (kind.many()) {
			text.append(kind.key()).append(":\n");
			facts.forEach(fact -> text.append(INDENT).append("- ").append(group(answers(kind, fact), INDENT + INDENT, true)).append('\n'));
			return;
		}
		Map<String, String> answers = answers(kind, facts.get(0));
		String group = answers.isEmpty() && !kind.always() ? JobKeys.FITTED : group(answers, INDENT, false);
		text.append(kind.key()).append(group.startsWith("\n") ? ":" : ": ").append(group).append('\n');
	}

	private static Map<String, String> answers(FactKind kind, Fact fact) {
		Map<String, String> answers = new LinkedHashMap<>();
		kind.fields().stream().filter(f -> f.calculation().isEmpty()).forEach(
				field -> kind.answer(fact, field).value().ifPresent(v -> answers.put(field.label(), v.text())));
		return answers;
	}

	/** Between braces when it fits on a line, else a line for each. */
	private static String group(Map<String, String> answers, String indent, boolean item) {
		String braces = "{ " + joined(answers, ", ", true) + " }";
		if (answers.isEmpty()) {
			return item ? JobKeys.UNKNOWN : "{ }";
		} else if (braces.length() + indent.length() < LINE) {
			return braces;
		}
		return (item ? "" : "\n" + indent) + joined(answers, "\n" + indent, false);
	}

	private static String joined(Map<String, String> answers, String separator, boolean inBraces) {
		return answers.entrySet().stream().map(e -> e.getKey() + ": " + YamlWords.of(e.getValue(), inBraces))
				.reduce((a, b) -> a + separator + b).orElse("");
	}

	private void notFitted(List<String> absent) {
		String brackets = "[" + String.join(", ", absent) + "]";
		if (brackets.length() + JobKeys.NOT_FITTED.length() < LINE) {
			line(JobKeys.NOT_FITTED, brackets);
		} else {
			text.append(JobKeys.NOT_FITTED).append(":\n");
			absent.forEach(label -> text.append(INDENT).append("- ").append(label).append('\n'));
		}
	}
}
