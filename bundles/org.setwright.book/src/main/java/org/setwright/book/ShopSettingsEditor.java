package org.setwright.book;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setwright.book.yaml.YamlEditor;
import org.setwright.book.yaml.YamlNode.Entry;
import org.setwright.book.yaml.YamlNode.Mapping;
import org.setwright.book.yaml.YamlNode.Scalar;
import org.setwright.book.yaml.YamlNode.Sequence;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/** Adds to the text of {@code settings.yaml}, and leaves what stands there, comments too, as it is. */
public final class ShopSettingsEditor {
	private static final String STEP = "  ";

	private ShopSettingsEditor() {
	}

	/**
	 * @param text of the file, "" when there is none yet
	 * @param trade which facts and settings there are without it
	 * @return the text with {@code draft} at its end, and what is wrong with it; nothing is to be written while something is
	 */
	public static Written with(String text, ShopSettingDraft draft, Catalogue trade) {
		ShopSettingsText before = ShopSettingsReader.read(text, trade);
		if (!before.sound()) {
			return new Written(text, before.problems().subList(0, 1));
		}
		String after = added(text, draft);
		List<Problem> problems = new ArrayList<>(ShopSettingsReader.read(after, trade).problems());
		return new Written(after, problems);
	}

	/** What would be written. @param problems why it must not be; empty when it may */
	public record Written(String text, List<Problem> problems) {
		public Written {
			problems = List.copyOf(problems);
		}
	}

	private static String added(String text, ShopSettingDraft draft) {
		if (ShopSettingsReader.list(text).isPresent()) {
			YamlEditor editor = new YamlEditor(text);
			Entry all = editor.root().entries().get(0);
			if (all.value() instanceof Sequence list && !list.items().isEmpty()) {
				editor.add(list, list.flow() ? "{ " + String.join(", ", parts(draft, true)) + " }" : lines(draft, editor.indent(list)));
			} else {
				editor.replaceValue(all, "\n" + STEP + "- " + lines(draft, STEP));
			}
			return editor.text();
		}
		String lines = ShopSettingsReader.SETTINGS + ":\n" + STEP + "- " + lines(draft, STEP) + "\n";
		return text.isEmpty() || text.endsWith("\n") ? text + lines : text + "\n" + lines;
	}

	private static String lines(ShopSettingDraft draft, String indent) {
		return String.join("\n" + indent + STEP, parts(draft, false));
	}

	private static List<String> parts(ShopSettingDraft draft, boolean inBraces) {
		List<String> parts = new ArrayList<>();
		parts.add(part(ShopSettingsReader.SETTING, draft.name(), inBraces));
		if (!draft.group().isBlank() && !draft.group().strip().equals(ShopSettingsReader.OWN_GROUP)) {
			parts.add(part(ShopSettingsReader.GROUP, draft.group(), inBraces));
		}
		parts.add(part(ShopSettingsReader.MEANING, draft.meaning(), inBraces));
		parts.add(ShopSettingsReader.VALUES + ": " + values(draft.values().strip(), inBraces));
		if (!draft.needed().isBlank()) {
			parts.add(part(ShopSettingsReader.NEEDED, draft.needed(), inBraces));
		}
		return parts;
	}

	private static String part(String key, String value, boolean inBraces) {
		return key + ": " + YamlWords.of(value.strip().replaceAll("\\s+", " "), inBraces);
	}

	private static String values(String written, boolean inBraces) {
		if (ValuesText.read(written).isPresent()) {
			return YamlWords.of(written, inBraces);
		}
		String names = written.startsWith("[") && written.endsWith("]") ? written.substring(1, written.length() - 1) : written;
		return Arrays.stream(names.split(",")).map(String::strip).filter(n -> !n.isEmpty()).map(n -> YamlWords.of(n, true))
				.collect(Collectors.joining(", ", "[", "]"));
	}

	/**
	 * @param setting one of the shop's own whose values are listed
	 * @return the text with {@code value} at the end of its list; empty when that cannot be done
	 */
	public static Optional<String> withValue(String text, Setting setting, String value, Catalogue trade) {
		Optional<Sequence> values = ShopSettingsReader.list(text).stream().flatMap(l -> l.items().stream()).filter(Mapping.class::isInstance)
				.map(Mapping.class::cast).filter(m -> named(m, setting)).flatMap(m -> m.entries().stream())
				.filter(e -> Keys.normal(e.key().text()).equals(ShopSettingsReader.VALUES)).map(Entry::value)
				.filter(Sequence.class::isInstance).map(Sequence.class::cast).findFirst();
		return values.map(list -> {
			YamlEditor editor = new YamlEditor(text);
			editor.add(list, YamlWords.of(value, list.flow()));
			return editor.text();
		}).filter(after -> ShopSettingsReader.read(after, trade).sound());
	}

	private static boolean named(Mapping mapping, Setting setting) {
		return mapping.entries().stream().anyMatch(e -> Keys.normal(e.key().text()).equals(ShopSettingsReader.SETTING)
				&& e.value() instanceof Scalar name && ShopWords.word(name.text()).equals(setting.id()));
	}
}
