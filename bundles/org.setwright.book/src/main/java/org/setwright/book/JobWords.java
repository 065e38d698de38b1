package org.setwright.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.text.SourceText;
import org.setwright.book.yaml.YamlNode;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlReader;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;

/** Goes through the text of a job and notes what its words are about; what cannot be understood is passed over. */
final class JobWords {
	private final Catalogue catalogue;
	private final List<JobWord> found = new ArrayList<>();

	private JobWords(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	static List<JobWord> of(String text, Catalogue catalogue) {
		JobWords words = new JobWords(catalogue);
		YamlReader.read(SourceText.of(text)).root().filter(Mapping.class::isInstance)
				.ifPresent(root -> ((Mapping) root).entries().forEach(words::entry));
		return words.found;
	}

	private void entry(Entry entry) {
		String name = Keys.normal(entry.key().text());
		if (name.equals(JobKeys.EXPECT) && entry.value() instanceof Mapping expected) {
			expected.entries().forEach(this::expected);
		} else if (name.equals(JobKeys.NOT_FITTED)) {
			scalars(entry.value()).forEach(s -> NotFitted.named(catalogue, s.text()).ifPresent(k -> kind(k, s)));
		} else if (!JobKeys.ALL.contains(name)) {
			catalogue.kindCalled(name).filter(k -> !k.calculated()).ifPresent(k -> facts(k, entry));
		}
	}

	private void kind(FactKind kind, Scalar written) {
		found.add(new JobWord.OfKind(kind, written.start(), written.end()));
	}

	private void facts(FactKind kind, Entry entry) {
		kind(kind, entry.key());
		if (entry.value() instanceof Mapping fact) {
			fact.entries().forEach(e -> field(kind, e));
		} else if (entry.value() instanceof Sequence list) {
			list.items().forEach(item -> item(kind, item));
		} else if (entry.value() instanceof Scalar presence) {
			kind(kind, presence);
		}
	}

	private void item(FactKind kind, YamlNode item) {
		if (item instanceof Mapping fact) {
			fact.entries().forEach(e -> field(kind, e));
		} else if (item instanceof Scalar written) {
			kind.fields().stream().filter(Field::naming).findFirst().ifPresent(f -> answer(kind, f, written));
		}
	}

	private void field(FactKind kind, Entry entry) {
		kind.fieldLabelled(Keys.normal(entry.key().text())).ifPresent(field -> {
			found.add(new JobWord.OfField(kind, field, Optional.empty(), entry.key().start(), entry.key().end()));
			if (entry.value() instanceof Scalar written) {
				answer(kind, field, written);
			}
		});
	}

	private void answer(FactKind kind, Field field, Scalar written) {
		found.add(new JobWord.OfField(kind, field, Optional.of(written.text().strip()), written.start(), written.end()));
	}

	private void expected(Entry entry) {
		Optional<ItemList> list = ItemList.called(Keys.normal(entry.key().text()));
		if (list.isPresent()) {
			items(list.get(), entry.value());
		} else {
			catalogue.settingLabelled(Keys.normal(entry.key().text())).ifPresent(setting -> setting(setting, entry));
		}
	}

	private void setting(Setting setting, Entry entry) {
		found.add(new JobWord.OfSetting(setting, Optional.empty(), entry.key().start(), entry.key().end()));
		if (entry.value() instanceof Scalar written) {
			value(setting, written);
		} else if (entry.value() instanceof Mapping decided) {
			decided.entries().forEach(e -> {
				if (e.value() instanceof Scalar written && Keys.normal(e.key().text()).equals(ExpectationText.BY)) {
					rule(written);
				} else if (e.value() instanceof Scalar written) {
					value(setting, written);
				}
			});
		}
	}

	private void value(Setting setting, Scalar written) {
		found.add(new JobWord.OfSetting(setting, Optional.of(written.text().strip()), written.start(), written.end()));
	}

	private void rule(Scalar written) {
		found.add(new JobWord.OfRule(ExpectedItem.onALine(written.text()), written.start(), written.end()));
	}

	private void items(ItemList list, YamlNode written) {
		if (list.topic() == ItemList.Topic.FINDINGS) {
			for (Scalar name : scalars(written)) {
				ItemText.read(list, name.text(), "", Position.whole("")).map(ExpectedFinding.class::cast)
						.filter(f -> !f.other() && !f.name().equals(ExpectedItem.ANY))
						.ifPresent(f -> found.add(new JobWord.OfFinding(f.word(), name.start(), name.end())));
			}
		} else if (list.topic() == ItemList.Topic.START_UP) {
			for (YamlNode item : written instanceof Sequence several ? several.items() : List.of(written)) {
				if (item instanceof Mapping check) {
					check.entries().stream().filter(e -> Keys.normal(e.key().text()).equals(ExpectedCheck.BY) && e.value() instanceof Scalar)
							.forEach(e -> rule((Scalar) e.value()));
				}
			}
		}
	}

	private static List<Scalar> scalars(YamlNode written) {
		List<YamlNode> items = written instanceof Sequence list ? list.items() : List.of(written);
		return items.stream().filter(Scalar.class::isInstance).map(Scalar.class::cast).toList();
	}
}
