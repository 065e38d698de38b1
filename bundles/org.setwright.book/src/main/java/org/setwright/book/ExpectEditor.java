package org.setwright.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.yaml.YamlEditor;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Setting;

/** Makes edits in what a job file expects and in what was accepted. */
final class ExpectEditor {
	private final JobFileEditor file;
	private final YamlEditor yaml;

	ExpectEditor(JobFileEditor file) {
		this.file = file;
		yaml = file.yaml();
	}

	/** @return the item as it stands in a list */
	static String written(ExpectedItem item, boolean inBraces) {
		String words = YamlWords.of(item.head(), inBraces) + (item.words().isEmpty() ? "" : ": " + YamlWords.of(item.words(), inBraces));
		return inBraces && !item.words().isEmpty() ? "{ " + words + " }" : words;
	}

	void expect(Setting setting, JobCase.Expectation expectation) {
		put(setting.label(), ExpectationText.written(expectation, flow()));
	}

	void expectNothing(Setting setting) {
		remove(setting.label());
	}

	/** @param onLines whether a list that is not there yet is begun on a line of its own */
	void expect(ExpectedItem item, boolean onLines) {
		String key = item.list().key();
		YamlNode list = expected().flatMap(m -> JobFileEditor.find(m, key)).map(Entry::value).orElse(null);
		if (list instanceof Sequence sequence) {
			yaml.add(sequence, written(item, sequence.flow() || sequence.items().isEmpty()));
		} else if (list instanceof Scalar kind) {
			put(key, "[" + YamlWords.of(kind.text(), true) + ", " + written(item, true) + "]");
		} else if (list instanceof Mapping mapping) {
			Entry only = mapping.entries().get(0);
			put(key, "[{ " + only.key().text() + ": " + YamlWords.of(((Scalar) only.value()).text(), true) + " }, " + written(item, true) + "]");
		} else {
			put(key, onLines && !flow() ? "\n    - " + written(item, false) : "[" + written(item, true) + "]");
		}
	}

	void expectNothing(ExpectedItem item) {
		Entry list = JobFileEditor.find(expected().orElseThrow(), item.list().key()).orElseThrow();
		if (list.value() instanceof Sequence sequence && sequence.items().size() > 1) {
			yaml.remove(sequence, index(sequence.items(), item));
		} else {
			remove(item.list().key());
		}
	}

	/** @param onLines whether it is told on lines of its own; else between braces */
	void accept(Acceptance acceptance, boolean onLines) {
		YamlNode list = file.entry(JobKeys.ACCEPTED).map(Entry::value).orElse(null);
		boolean flow = yaml.root().flow() || !onLines || list instanceof Sequence sequence && (sequence.flow() || sequence.items().isEmpty());
		if (list instanceof Sequence sequence) {
			yaml.add(sequence, flow ? braces(acceptance) : lines(acceptance, yaml.indent(sequence) + "  "));
		} else {
			file.put(JobKeys.ACCEPTED, flow ? "[" + braces(acceptance) + "]" : "\n  - " + lines(acceptance, "    "));
		}
	}

	private static String braces(Acceptance acceptance) {
		return "{ " + joined(Acceptances.texts(acceptance), ", ", true) + " }";
	}

	private static String lines(Acceptance acceptance, String indent) {
		return joined(Acceptances.texts(acceptance), "\n" + indent, false);
	}

	private static String joined(Map<String, String> texts, String separator, boolean inBraces) {
		return texts.entrySet().stream().map(e -> e.getKey() + ": " + YamlWords.of(e.getValue(), inBraces)).collect(Collectors.joining(separator));
	}

	/** The node that says the same; every node is one item. */
	private static int index(List<YamlNode> items, ExpectedItem item) {
		for (int i = 0; i < items.size(); i++) {
			if (says(items.get(i), item)) {
				return i;
			}
		}
		throw new IllegalStateException("no such item: " + item.text());
	}

	private static boolean says(YamlNode node, ExpectedItem item) {
		Entry only = node instanceof Mapping mapping ? mapping.entries().get(0) : null;
		String head = only == null ? ((Scalar) node).text() : only.key().text();
		String words = only == null ? "" : ((Scalar) only.value()).text();
		return ItemText.read(item.list(), head, words, item.at()).filter(item::same).isPresent();
	}

	private Optional<Mapping> expected() {
		return file.entry(JobKeys.EXPECT).map(Entry::value).map(Mapping.class::cast);
	}

	private boolean flow() {
		return yaml.root().flow() || expected().filter(m -> m.flow() || m.entries().isEmpty()).isPresent();
	}

	private void put(String name, String written) {
		Optional<Mapping> expected = expected();
		if (expected.isEmpty()) {
			String line = name + ":" + (written.startsWith("\n") ? "" : " ") + written;
			file.put(JobKeys.EXPECT, yaml.root().flow() ? "{ " + line + " }" : "\n  " + line);
			return;
		}
		Optional<Entry> old = JobFileEditor.find(expected.get(), name);
		if (old.isPresent()) {
			yaml.replaceValue(old.get(), written);
		} else {
			yaml.insert(expected.get(), expected.get().entries().size() - 1, name, written);
		}
	}

	private void remove(String name) {
		Mapping expected = expected().orElseThrow();
		if (expected.entries().size() == 1) {
			file.removeKey(JobKeys.EXPECT);
		} else {
			yaml.remove(expected, expected.entries().indexOf(JobFileEditor.find(expected, name).orElseThrow()));
		}
	}
}
