package org.setwright.writing.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.book.Book;
import org.setwright.book.Problem;
import org.setwright.book.ShopSettingDraft;
import org.setwright.book.ShopSettings;
import org.setwright.book.ShopSettingsEditor;
import org.setwright.book.ShopWords;
import org.setwright.book.Table;
import org.setwright.book.ValuesText;
import org.setwright.engine.language.RuleParser;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.writing.Manuscript;
import org.setwright.writing.text.Piece;
import org.setwright.writing.text.RuleBlock;
import org.setwright.writing.text.RuleText;
import org.setwright.writing.text.TextEdit;

/** Turns a word that rules or tables propose, and nothing knows, into a setting of the shop's own. */
public final class NewSetting {
	private static final String ARROW = "=>";
	private final Manuscript manuscript;

	/** @param manuscript the book it is to be added to */
	public NewSetting(Manuscript manuscript) {
		this.manuscript = manuscript;
	}

	/**
	 * @param word a setting that is not known, as a rule writes it, or as the heading of a table does
	 * @return what the book says of it already: its name, and the values that are proposed. What only a person can know is blank.
	 */
	public ShopSettingDraft guess(String word) {
		String id = ShopWords.word(word);
		Set<String> proposed = new LinkedHashSet<>();
		for (Book.RuleFile file : manuscript.book().ruleFiles()) {
			RuleText.of(manuscript.text(file.path())).blocks().stream().flatMap(b -> b.says().stream()).filter(s -> s.word().equals("propose"))
					.filter(s -> s.first().filter(f -> f.text().equals(id)).isPresent()).map(NewSetting::value).filter(v -> !v.isEmpty()).forEach(proposed::add);
		}
		manuscript.book().tables().forEach(t -> cells(t, id).forEach(proposed::add));
		return new ShopSettingDraft(word.equals(id) ? ShopWords.name(word) : word, "", "", values(List.copyOf(proposed)), "");
	}

	private static String value(RuleBlock.Says says) {
		return says.pieces().stream().filter(p -> p.start() >= says.first().orElseThrow().end() && !p.is(",") && !p.is(")") && !p.is(";"))
				.map(Piece::inside).collect(Collectors.joining());
	}

	private static List<String> cells(Table table, String id) {
		List<String> cells = new ArrayList<>();
		for (int column = 0; column < table.header().size(); column++) {
			String heading = table.header().get(column).text();
			if (heading.startsWith(ARROW) && ShopWords.word(heading.substring(ARROW.length())).equals(id)) {
				int at = column;
				table.rows().stream().map(r -> r.cells().get(at).text().strip()).filter(c -> !c.isEmpty()).forEach(cells::add);
			}
		}
		return cells;
	}

	/** What is proposed, as what may be set: no more than that, because nobody has said more. */
	private static String values(List<String> proposed) {
		List<String> plain = proposed.stream().filter(v -> !v.startsWith("$")).toList();
		if (plain.isEmpty()) {
			return "";
		} else if (plain.stream().allMatch(v -> v.equalsIgnoreCase("yes") || v.equalsIgnoreCase("no"))) {
			return ValuesText.YES_OR_NO;
		}
		String first = plain.get(0);
		Optional<String> range = ValuesText.read(first + " to " + first).map(d -> range(plain));
		return range.filter(r -> ValuesText.read(r).isPresent())
				.orElseGet(() -> plain.stream().map(NewSetting::name).distinct().collect(Collectors.joining(", ")));
	}

	private static String range(List<String> numbers) {
		Comparator<String> bySize = Comparator.comparingDouble(n -> Quantity.parse(n).map(Quantity::base).orElseGet(() -> number(n)));
		return numbers.stream().min(bySize).orElseThrow() + " to " + numbers.stream().max(bySize).orElseThrow();
	}

	private static double number(String written) {
		try {
			return Double.parseDouble(written);
		} catch (NumberFormatException none) {
			return Double.NaN;
		}
	}

	private static String name(String value) {
		return value.equals(ShopWords.word(value)) ? ShopWords.name(value) : value;
	}

	/** What comes of a draft. @param edits by path below the book folder @param refusals why nothing may be written, in sentences; empty when it may */
	public record Added(Map<String, List<TextEdit>> edits, List<String> refusals) {
		public Added {
			edits = Map.copyOf(edits);
			refusals = List.copyOf(refusals);
		}
	}

	/** @return the edits that add {@code draft} to the book, or why it cannot be added as it is */
	public Added added(ShopSettingDraft draft) {
		String before = manuscript.text(ShopSettings.FILE);
		ShopSettingsEditor.Written written = ShopSettingsEditor.with(before, draft, trade());
		List<Problem> wrong = new ArrayList<>(written.problems());
		String needed = draft.needed().strip();
		if (!needed.isEmpty() && !needed.equalsIgnoreCase(Setting.ALWAYS)) {
			wrong.addAll(RuleParser.conditions(ShopSettings.FILE, needed, manuscript.book().catalogue()).problems());
		}
		return wrong.isEmpty() ? new Added(Map.of(ShopSettings.FILE, List.of(TextEdit.between(before, written.text()))), List.of())
				: new Added(Map.of(), wrong.stream().map(p -> p.what() + " " + p.remedy()).distinct().toList());
	}

	/** @return the edits that add {@code word} to the values of {@code setting}; empty when it is no list of the shop's own, or cannot hold it */
	public Optional<Map<String, List<TextEdit>>> withValue(Setting setting, String word) {
		String before = manuscript.text(ShopSettings.FILE);
		return manuscript.book().settings().own(setting).flatMap(own -> ShopSettingsEditor.withValue(before, setting, name(word), trade()))
				.map(after -> Map.of(ShopSettings.FILE, List.of(TextEdit.between(before, after))));
	}

	private Catalogue trade() {
		return manuscript.book().settings().trade();
	}
}
