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
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * A setting of the shop's own with the text that describes it.
 *
 * @param setting what it says
 * @param at where its name stands
 * @param text as written, from its dash on, with comments directly above it; without a line break at its end
 * @param start where {@code text} begins in the file, in characters from 0, a byte order mark not counted
 */
public record ShopSettingText(Setting setting, Position at, String text, int start) {

	/** @return where {@code text} ends in the file, exclusive */
	public int end() {
		return start + text.length();
	}

	/**
	 * Tells the settings of a file apart.
	 *
	 * @param text of {@code settings.yaml}
	 * @param trade which facts and settings there are without it
	 * @return in file order; empty when the file has errors
	 */
	public static Optional<List<ShopSettingText>> all(String text, Catalogue trade) {
		ShopSettingsText read = ShopSettingsReader.read(text, trade);
		if (!read.sound()) {
			return Optional.empty();
		}
		String plain = SourceText.of(text).text();
		Optional<Sequence> list = ShopSettingsReader.list(text);
		List<ShopSettingText> all = new ArrayList<>();
		for (YamlNode item : list.map(Sequence::items).orElse(List.of())) {
			Optional<ShopSetting> own = read.settings().own().stream().filter(s -> s.setting().id().equals(id(item))).findFirst();
			int start = list.orElseThrow().flow() ? item.start() : start(plain, item.start());
			own.ifPresent(s -> all.add(new ShopSettingText(s.setting(), s.at(), plain.substring(start, end(plain, item, start)).stripTrailing(), start)));
		}
		return Optional.of(all);
	}

	private static String id(YamlNode item) {
		return item instanceof Mapping mapping ? mapping.entries().stream().filter(e -> Keys.normal(e.key().text()).equals(ShopSettingsReader.SETTING))
				.map(Entry::value).filter(Scalar.class::isInstance).map(v -> ShopWords.word(((Scalar) v).text())).findFirst().orElse("") : "";
	}

	/** The beginning of the line with the dash, or of the comments directly above. */
	private static int start(String text, int first) {
		int start = lineOf(text, text.lastIndexOf('-', first - 1));
		while (start > 0 && text.substring(lineOf(text, start - 1), start).strip().startsWith("#")) {
			start = lineOf(text, start - 1);
		}
		return start;
	}

	private static int lineOf(String text, int at) {
		return text.lastIndexOf('\n', at - 1) + 1;
	}

	/** The end of its last line, which may have a comment; between brackets the end of what is written. */
	private static int end(String text, YamlNode item, int start) {
		int line = text.indexOf('\n', Math.max(start, item.end() - 1));
		return start == item.start() ? item.end() : line < 0 ? text.length() : line;
	}
}
