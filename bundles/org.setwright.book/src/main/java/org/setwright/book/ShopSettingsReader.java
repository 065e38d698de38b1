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
import org.setwright.book.yaml.YamlText;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Domain.Choices.Option;
import org.setwright.trade.catalogue.Setting;

/** Reads {@code settings.yaml}: what a shop sets on a controller beyond what the trade's catalogue knows. */
public final class ShopSettingsReader {
	static final String SETTINGS = "settings";
	static final String SETTING = "setting";
	static final String GROUP = "group";
	static final String MEANING = "meaning";
	static final String VALUES = "values";
	static final String NEEDED = "needed";
	/** The heading of settings for which the shop names none. */
	static final String OWN_GROUP = "settings of the shop's own";
	private static final List<String> KEYS = List.of(SETTING, GROUP, MEANING, VALUES, NEEDED);
	private static final int MOST = 500;
	private static final String BEGIN = "Begin with a line \"" + SETTINGS + ":\", and under it a dash and \"" + SETTING + ":\" for each.";

	private final Catalogue trade;
	private final ProblemList problems;
	private final List<ShopSetting> own = new ArrayList<>();

	private ShopSettingsReader(Catalogue trade, ProblemList problems) {
		this.trade = trade;
		this.problems = problems;
	}

	/**
	 * Never throws for what the text says.
	 *
	 * @param text the whole file
	 * @param trade which facts and settings there are without it
	 */
	public static ShopSettingsText read(String text, Catalogue trade) {
		SourceText source = SourceText.of(text);
		ProblemList problems = new ProblemList(ShopSettings.FILE, source);
		YamlText yaml = YamlReader.read(source);
		yaml.faults().forEach(f -> problems.error(f.offset(), f.what(), f.remedy()));
		ShopSettingsReader reader = new ShopSettingsReader(trade, problems);
		if (yaml.root().isPresent()) {
			reader.all(yaml.root().get());
		}
		return new ShopSettingsText(ShopSettings.added(trade, reader.own), problems.all());
	}

	/** @return the list of settings that {@code text}, which must be sound, consists of; an empty one for the word "settings" alone; empty when it says nothing */
	static Optional<Sequence> list(String text) {
		Optional<YamlNode> root = YamlReader.read(SourceText.of(text)).root();
		return root.filter(Mapping.class::isInstance).map(r -> ((Mapping) r).entries().get(0).value())
				.map(v -> v instanceof Sequence list ? list : new Sequence(List.of(), false, v.start(), v.end()));
	}

	private void all(YamlNode root) {
		if (!(root instanceof Mapping mapping)) {
			problems.error(root.start(), "The file lists settings, and this is no list of them.", BEGIN);
			return;
		}
		Keys keys = Keys.of(mapping, problems);
		keys.entries().stream().filter(e -> !Keys.normal(e.key().text()).equals(SETTINGS)).forEach(e -> problems.error(e.key().start(),
				"There is no " + Misfit.quoted(e.key().text()) + " in " + ShopSettings.FILE + ".", BEGIN));
		YamlNode list = keys.value(SETTINGS).orElse(mapping);
		if (list instanceof Sequence items) {
			items.items().stream().limit(MOST).forEach(this::one);
			items.items().stream().skip(MOST).limit(1).forEach(i -> problems.error(i.start(), "There are more than " + MOST + " settings.", "Remove some."));
		} else if (list != mapping && !(list instanceof Scalar scalar && scalar.saysNothing())) {
			problems.error(list.start(), "A list of settings is expected here.", BEGIN);
		}
	}

	private void one(YamlNode node) {
		if (!(node instanceof Mapping mapping)) {
			problems.error(node.start(), "This describes no setting.", "Write \"- " + SETTING + ": <name>\", and under it its meaning and values.");
			return;
		}
		Keys keys = Keys.of(mapping, problems);
		for (Entry entry : keys.entries()) {
			if (!KEYS.contains(Keys.normal(entry.key().text()))) {
				problems.error(entry.key(), "Nothing called " + Misfit.quoted(entry.key().text()) + " is said of a setting.",
						"Write one of: " + String.join(", ", KEYS) + ".", Nearest.several(entry.key().text(), KEYS, 1));
			}
		}
		Optional<Scalar> name = demanded(keys, SETTING, mapping, "The setting has no name.", "Add \"" + SETTING + ": <name>\".").filter(this::free);
		Optional<Scalar> meaning = demanded(keys, MEANING, mapping, "Nobody can tell what this setting is for.",
				"Add \"" + MEANING + ": <what it does, in a sentence>\".");
		Optional<Domain> domain = values(keys, mapping);
		if (name.isPresent() && domain.isPresent()) {
			Optional<Scalar> needed = keys.value(NEEDED).flatMap(n -> words(n, "when a job needs it"));
			Optional<Scalar> group = keys.value(GROUP).flatMap(n -> words(n, "its group"));
			String label = label(name.get());
			Setting setting = new Setting(ShopWords.word(label), label, group.map(this::group).orElse(OWN_GROUP), meaning.map(m -> m.text().strip()).orElse(""),
					domain.get(), needed.map(n -> Keys.normal(n.text()).equals(Setting.ALWAYS) ? Setting.ALWAYS : n.text().strip()).orElse(Setting.OPTIONAL));
			boolean conditions = !setting.requiredWhen().equals(Setting.ALWAYS) && !setting.requiredWhen().equals(Setting.OPTIONAL);
			List<Position> values = optionNames(keys.value(VALUES).orElseThrow()).stream().map(n -> problems.at(n.start())).toList();
			own.add(new ShopSetting(setting, problems.at(name.get().start()), values, needed.filter(n -> conditions)
					.map(n -> problems.at(n.start() + (n.style() == YamlNode.Style.QUOTED ? 1 : 0)))));
		}
	}

	private static String label(Scalar name) {
		return name.text().strip().replaceAll("\\s+", " ");
	}

	private boolean free(Scalar name) {
		String label = label(name);
		Optional<ShopSetting> first = own.stream().filter(s -> s.setting().id().equals(ShopWords.word(label))).findFirst();
		Optional<Misfit> refused = first.map(s -> new Misfit("There is already a setting " + Misfit.quoted(s.setting().label()) + ", on line "
				+ s.at().line() + ".", "Remove one of the two.")).or(() -> ShopWords.refusal(label, trade));
		refused.ifPresent(r -> problems.error(name.start(), r.what(), r.remedy()));
		return refused.isEmpty();
	}

	/** The heading as the catalogue writes it, when it is one of its own. */
	private String group(Scalar written) {
		String text = written.text().strip();
		return trade.settings().stream().map(Setting::group).filter(g -> g.equalsIgnoreCase(text)).findFirst().orElse(text);
	}

	private Optional<Scalar> demanded(Keys keys, String key, Mapping of, String what, String remedy) {
		Optional<YamlNode> value = keys.value(key);
		if (value.isEmpty() || value.get() instanceof Scalar scalar && scalar.saysNothing()) {
			problems.error(value.map(YamlNode::start).orElse(of.start()), what, remedy);
			return Optional.empty();
		}
		return words(value.get(), key.equals(SETTING) ? "its name" : "its meaning");
	}

	private Optional<Scalar> words(YamlNode node, String of) {
		if (!(node instanceof Scalar scalar)) {
			problems.error(node.start(), "A list or group stands where words are expected.",
					"Write words; put them in quotes when they hold colons, brackets or braces.");
			return Optional.empty();
		} else if (scalar.text().length() > JobKeys.LONGEST_VALUE) {
			problems.error(scalar.start(), "Too much is written for " + of + ".", "Write at most " + JobKeys.LONGEST_VALUE + " characters.");
			return Optional.empty();
		}
		return scalar.saysNothing() || problems.refusedLines(scalar, of) ? Optional.empty() : Optional.of(scalar);
	}

	private Optional<Domain> values(Keys keys, Mapping of) {
		Optional<YamlNode> written = keys.value(VALUES);
		if (written.isPresent() && written.get() instanceof Sequence list && !list.items().isEmpty()) {
			return choices(list);
		}
		Optional<Domain> domain = written.filter(Scalar.class::isInstance).flatMap(n -> ValuesText.read(((Scalar) n).text()));
		if (domain.isEmpty()) {
			problems.error(written.map(YamlNode::start).orElse(of.start()), written.isEmpty() ? "Nobody can tell what may be set."
					: "This does not say what may be set.", "Write \"" + VALUES + ":\" and " + ValuesText.HOW + ".");
		}
		return domain;
	}

	private Optional<Domain> choices(Sequence list) {
		List<Option> options = new ArrayList<>();
		for (YamlNode item : list.items()) {
			Optional<Entry> explained = explained(item);
			Optional<Scalar> name = explained.isPresent() ? explained.map(Entry::key) : words(item, "a value");
			String meaning = explained.map(e -> ((Scalar) e.value()).text().strip()).orElse("");
			if (item instanceof Scalar scalar && scalar.saysNothing()) {
				problems.error(item.start(), "A value without a name cannot be set.", "Write its name, or remove it from the list.");
			}
			name.ifPresent(n -> option(n, meaning, options));
		}
		return options.size() == list.items().size() ? Optional.of(new Domain.Choices(options)) : Optional.empty();
	}

	/** A value with its meaning: "once a season: at the first call of winter". */
	private static Optional<Entry> explained(YamlNode item) {
		return item instanceof Mapping mapping && mapping.entries().size() == 1 && mapping.entries().get(0).value() instanceof Scalar
				? Optional.of(mapping.entries().get(0)) : Optional.empty();
	}

	private static List<Scalar> optionNames(YamlNode values) {
		return values instanceof Sequence list
				? list.items().stream().map(i -> explained(i).map(Entry::key).orElseGet(() -> (Scalar) i)).toList() : List.of();
	}

	private void option(Scalar name, String meaning, List<Option> options) {
		String label = label(name);
		Optional<Misfit> refused = ShopWords.refusalOfValue(label, options.stream().map(Option::label).toList());
		refused.ifPresent(r -> problems.error(name.start(), r.what(), r.remedy()));
		if (refused.isEmpty()) {
			options.add(new Option(ShopWords.word(label), label, meaning));
		}
	}
}
