package org.setwright.book;

import java.util.List;
import java.util.Optional;
import org.setwright.book.yaml.YamlEditor;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Value;

/** Makes edits in the text of a sound job file, as few characters as can be. */
final class JobFileEditor {
	private final YamlEditor yaml;
	private final Catalogue catalogue;
	private final List<String> keyOrder;

	JobFileEditor(String text, Catalogue catalogue) {
		yaml = new YamlEditor(text);
		this.catalogue = catalogue;
		keyOrder = JobKeys.inOrder(catalogue);
	}

	YamlEditor yaml() {
		return yaml;
	}

	/** Writes a known answer. */
	void answer(JobField at, Value value) {
		String written = YamlWords.of(value.text(), true);
		Field field = at.field().orElseThrow();
		YamlNode fact = entry(at.kind().key()).map(Entry::value).map(v -> at.kind().many() ? item(v, at.item()) : v).orElse(null);
		if (fact instanceof Mapping mapping) {
			answer(at.kind(), mapping, field, value);
		} else if (!at.kind().many()) {
			putKind(at.kind(), "{ " + field.label() + ": " + written + " }");
		} else if (fact instanceof Scalar scalar) {
			answer(at.kind(), scalar, field, written);
		} else {
			addItem(at.kind(), "{ " + field.label() + ": " + written + " }");
		}
	}

	private void answer(FactKind kind, Mapping fact, Field field, Value value) {
		Optional<Entry> old = find(fact, field.label());
		String written = YamlWords.of(value.text(), fact.flow() || fact.entries().isEmpty() || yaml.root().flow());
		if (old.isPresent()) {
			yaml.replaceValue(old.get(), written);
		} else {
			List<String> order = kind.fields().stream().map(f -> Keys.normal(f.label())).toList();
			yaml.insert(fact, place(fact, order, field.label()), field.label(), written);
		}
	}

	private void answer(FactKind kind, Scalar item, Field field, String written) {
		Optional<Field> naming = kind.fields().stream().filter(Field::naming).findFirst();
		boolean unknown = JobKeys.says(JobKeys.UNKNOWN, item.text());
		if (naming.filter(field::equals).isPresent()) {
			yaml.replaceItem(item, written);
		} else {
			String known = unknown ? "" : naming.orElseThrow().label() + ": " + YamlWords.of(item.text(), true) + ", ";
			yaml.replaceItem(item, "{ " + known + field.label() + ": " + written + " }");
		}
	}

	/** Writes that nobody knows, where an answer stands. */
	void takeBack(JobField at) {
		YamlNode fact = entry(at.kind().key()).map(Entry::value).map(v -> at.kind().many() ? item(v, at.item()) : v).orElse(null);
		if (fact instanceof Mapping mapping) {
			find(mapping, at.field().orElseThrow().label()).ifPresent(e -> yaml.replaceValue(e, JobKeys.UNKNOWN));
		} else if (fact instanceof Scalar scalar && at.kind().many()) {
			yaml.replaceItem(scalar, JobKeys.UNKNOWN);
		}
	}

	/** Writes one value for the whole kind, whatever stood there. */
	void putKind(FactKind kind, String written) {
		listedAsNotFitted(kind);
		put(kind.key(), written);
	}

	/** Removes what is said of a kind. */
	void removeKind(FactKind kind) {
		listedAsNotFitted(kind);
		removeKey(kind.key());
	}

	/** Adds a fact of a kind a job may have several of. */
	void addItem(FactKind kind, String written) {
		if (entry(kind.key()).map(Entry::value).orElse(null) instanceof Sequence list) {
			yaml.add(list, written);
		} else {
			putKind(kind, yaml.root().flow() ? "[" + written + "]" : "\n  - " + written);
		}
	}

	void removeItem(FactKind kind, int item) {
		yaml.remove((Sequence) entry(kind.key()).orElseThrow().value(), item);
	}

	/** Writes a value of the file itself, or changes it. */
	void put(String key, String written) {
		Optional<Entry> old = entry(key);
		if (old.isPresent()) {
			yaml.replaceValue(old.get(), written);
		} else {
			yaml.insert(yaml.root(), place(yaml.root(), keyOrder, key), key, written);
		}
	}

	void removeKey(String key) {
		entry(key).ifPresent(e -> yaml.remove(yaml.root(), yaml.root().entries().indexOf(e)));
	}

	private void listedAsNotFitted(FactKind kind) {
		YamlNode list = entry(JobKeys.NOT_FITTED).map(Entry::value).orElse(null);
		if (list instanceof Sequence names) {
			for (int i = 0; i < names.items().size(); i++) {
				if (names.items().get(i) instanceof Scalar name && isOf(kind, name)) {
					removeName(names, i);
					return;
				}
			}
		} else if (list instanceof Scalar name && isOf(kind, name)) {
			removeKey(JobKeys.NOT_FITTED);
		}
	}

	private void removeName(Sequence names, int index) {
		if (names.items().size() == 1) {
			removeKey(JobKeys.NOT_FITTED);
		} else {
			yaml.remove(names, index);
		}
	}

	private boolean isOf(FactKind kind, Scalar name) {
		return NotFitted.named(catalogue, name.text()).filter(kind::equals).isPresent();
	}

	Optional<Entry> entry(String key) {
		return find(yaml.root(), key);
	}

	private static YamlNode item(YamlNode value, int index) {
		return value instanceof Sequence list && index < list.items().size() ? list.items().get(index) : null;
	}

	static Optional<Entry> find(Mapping mapping, String name) {
		return mapping.entries().stream().filter(e -> JobKeys.says(Keys.normal(name), e.key().text())).findFirst();
	}

	/** After which entry of {@code mapping} the name belongs, when names come in {@code order}; -1 for before all. */
	private static int place(Mapping mapping, List<String> order, String name) {
		int rank = order.indexOf(Keys.normal(name));
		int after = -1;
		for (int i = 0; i < mapping.entries().size(); i++) {
			int other = order.indexOf(Keys.normal(mapping.entries().get(i).key().text()));
			after = other >= 0 && other < rank ? i : after;
		}
		return after;
	}
}
