package org.setwright.book;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Setting;

/**
 * How a shop may call its own settings and their values. People and files use the name as it is; rules use the word made of it:
 * "once a season" is {@code ONCE_A_SEASON}.
 */
public final class ShopWords {
	/** No name is longer. */
	public static final int LONGEST = 60;
	private static final Pattern NAME = Pattern.compile("\\p{L}(?:[\\p{L}\\p{N} /'-]*[\\p{L}\\p{N}])?");
	private static final Pattern MARKS = Pattern.compile("\\p{M}+");
	private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");
	private static final List<String> MEANT_OTHERWISE = List.of("YES", "NO", "TRUE", "FALSE", "NULL", "UNKNOWN", "NONE");

	private ShopWords() {
	}

	/** @return {@code name} as a word in rules; "" when it holds no letter and no digit */
	public static String word(String name) {
		String plain = MARKS.matcher(Normalizer.normalize(name.strip(), Normalizer.Form.NFD)).replaceAll("");
		return BETWEEN.matcher(plain).replaceAll("_").replaceAll("^_+|_+$", "").toUpperCase(Locale.ROOT);
	}

	/** @return {@code word} of a rule as people would say it: "ONCE_A_SEASON" is "once a season" */
	public static String name(String word) {
		return word.replace('_', ' ').strip().toLowerCase(Locale.ROOT);
	}

	/** @return why nothing of the shop's own can be called {@code name}, in sentences; empty when it can */
	public static Optional<Misfit> refusal(String name) {
		if (name.length() > LONGEST || !NAME.matcher(name).matches()) {
			return Optional.of(new Misfit(Misfit.quoted(name) + " cannot be a name of the shop's own.",
					"Begin with a letter, and keep to letters, digits, blanks, dashes, slashes and apostrophes, at most " + LONGEST + " characters."));
		}
		return MEANT_OTHERWISE.contains(word(name))
				? Optional.of(new Misfit(Misfit.quoted(name) + " means something else in rules and job files.", "Choose another name.")) : Optional.empty();
	}

	/** @return why no setting beside those of {@code known} can be called {@code name}, in sentences; empty when one can */
	public static Optional<Misfit> refusal(String name, Catalogue known) {
		Optional<Setting> taken = known.settingLabelled(name).or(() -> known.setting(word(name)));
		if (refusal(name).isPresent()) {
			return refusal(name);
		} else if (taken.isPresent()) {
			return Optional.of(new Misfit("There is already a setting " + Misfit.quoted(taken.get().label()) + ".", "Use that one, or choose another name."));
		}
		return ItemList.called(Keys.normal(name)).isPresent()
				? Optional.of(new Misfit(Misfit.quoted(name) + " begins a list in job files.", "Choose another name.")) : Optional.empty();
	}

	/** @return why no value can be called {@code name} beside {@code others}, in sentences; empty when one can */
	public static Optional<Misfit> refusalOfValue(String name, List<String> others) {
		List<String> taken = new ArrayList<>(others);
		taken.addAll(ExpectationText.WORDS);
		Optional<Misfit> refused = refusal(name);
		return refused.isPresent() ? refused : taken.stream().filter(o -> word(o).equals(word(name))).findFirst()
				.map(o -> new Misfit(ExpectationText.WORDS.contains(o) ? Misfit.quoted(name) + " is said in job files of a setting without a value."
						: "There is already a value " + Misfit.quoted(o) + ".", "Choose another name."));
	}
}
