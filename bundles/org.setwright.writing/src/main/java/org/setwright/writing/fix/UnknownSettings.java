package org.setwright.writing.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.book.Position;
import org.setwright.book.Table;
import org.setwright.book.ShopWords;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.Manuscript;
import org.setwright.writing.shop.NewSetting;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/** What can be done about a setting, or a value of one, that nothing knows yet: make it one of the shop's own. */
final class UnknownSettings {
	private static final String ARROW = "=>";
	private final Manuscript manuscript;
	private final NewSetting newSetting;

	UnknownSettings(Manuscript manuscript) {
		this.manuscript = manuscript;
		newSetting = new NewSetting(manuscript);
	}

	/** @return what mends the setting, or the value proposed for one, that begins at {@code at} */
	List<Fix> inRules(String path, RuleText rules, int at) {
		Optional<RuleBlock.Says> says = rules.blockAt(at).flatMap(b -> b.says().stream().filter(s -> s.start() <= at && at < s.end()).findFirst())
				.filter(s -> s.word().equals("propose"));
		Optional<Piece> named = says.flatMap(RuleBlock.Says::first);
		if (named.isEmpty()) {
			return List.of();
		}
		Optional<Setting> setting = setting(named.get().text());
		if (setting.isEmpty()) {
			return named.get().start() != at ? List.of() : List.of(asked(named.get().text()), note(path, says.get(), named.get()));
		}
		return says.get().pieces().stream().filter(p -> p.start() == at && p.kind() == Piece.Kind.WORD && p != named.get()).findFirst()
				.flatMap(p -> value(setting.get(), p.text())).stream().toList();
	}

	/** @return what mends the heading, or the cell below one, that begins at {@code at} */
	List<Fix> inTable(Position place, String text, int at) {
		Optional<Table> table = manuscript.book().tables().stream().filter(t -> t.path().equals(place.file())).findFirst();
		List<Fix> fixes = new ArrayList<>();
		for (int i = 0; table.isPresent() && i < table.get().header().size(); i++) {
			Table.Cell heading = table.get().header().get(i);
			String label = heading.text().startsWith(ARROW) ? heading.text().substring(ARROW.length()).strip() : "";
			int column = i;
			if (!label.isEmpty() && heading.at().equals(place) && setting(ShopWords.word(label)).isEmpty() && text.startsWith(heading.text(), at)) {
				fixes.add(asked(label));
			} else if (!label.isEmpty()) {
				table.get().rows().stream().map(r -> r.cells().get(column)).filter(c -> c.at().equals(place) && text.startsWith(c.text(), at)).findFirst()
						.flatMap(c -> manuscript.book().catalogue().settingLabelled(label).flatMap(s -> value(s, c.text()))).ifPresent(fixes::add);
			}
		}
		return fixes;
	}

	private Optional<Setting> setting(String word) {
		return manuscript.book().catalogue().setting(word);
	}

	private Fix asked(String word) {
		String name = word.equals(ShopWords.word(word)) ? ShopWords.name(word) : word;
		return Fix.asking("Make \"" + name + "\" a setting of the shop's own\u2026",
				"Asks what it means and what may be set, and writes it into settings.yaml. From then on rules, tables and jobs of this book know it.",
				newSetting.guess(word));
	}

	private Optional<Fix> value(Setting setting, String word) {
		return setting.domain() instanceof Domain.Choices choices && choices.read(word).isEmpty()
				? newSetting.withValue(setting, word).map(edits -> Fix.in("Add \"" + (word.equals(ShopWords.word(word)) ? ShopWords.name(word) : word)
						+ "\" to the values of " + setting.label(), "Writes it into settings.yaml, behind the others.", edits, -1))
				: Optional.empty();
	}

	/** For whoever wants it said and not set. */
	private static Fix note(String path, RuleBlock.Says says, Piece setting) {
		List<Piece> value = says.pieces().stream().filter(p -> p.start() >= setting.end() && !p.is(",") && !p.is(")") && !p.is(";")).toList();
		String set = value.isEmpty() ? "" : " to " + Place.words(value.stream().map(Piece::inside).reduce("", String::concat));
		String note = "caution( NOTE, \"Set " + Place.words(setting.text()) + set.replace("\"", "'") + ".\" );";
		return Fix.in(path, "Say it as a note on the job instead", "A note is shown on every job the rule speaks on, and no setting is made.",
				List.of(new TextEdit(says.start(), says.end(), note)), -1);
	}
}
