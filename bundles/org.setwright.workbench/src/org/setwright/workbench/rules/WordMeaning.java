package org.setwright.workbench.rules;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.CautionKind;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.StartUpPhase;
import org.setwright.workbench.uses.ThingWords;
import org.setwright.writing.uses.Thing;

/** Looks up in the catalogue what a word in a rule means. */
final class WordMeaning {
	private static final Pattern OPENED = Pattern.compile("([A-Z]\\w*)\\s*\\("); //$NON-NLS-1$
	private static final Pattern CHECK = Pattern.compile("startUp\\s*\\(\\s*$"); //$NON-NLS-1$
	private static final Pattern CAUTION = Pattern.compile("caution\\s*\\(\\s*$"); //$NON-NLS-1$
	private final Catalogue catalogue;

	WordMeaning(Catalogue catalogue) {
		this.catalogue = catalogue;
	}

	/** @return the meaning of the word at {@code offset} of {@code rules}, with what it may be; empty for other words */
	Optional<String> at(String rules, int offset) {
		String word = wordAt(rules, offset);
		Optional<FactKind> kind = kindBefore(rules, offset);
		return Stream.of(phase(rules, offset, word), caution(rules, offset, word), catalogue.kind(word).flatMap(k -> ThingWords.of(new Thing.OfKind(k))),
				kind.flatMap(k -> k.field(word).flatMap(f -> ThingWords.of(new Thing.OfField(k, f)))),
				catalogue.setting(word).flatMap(s -> ThingWords.of(new Thing.OfSetting(s))),
				ofChoice(word, kind)).flatMap(Optional::stream).findFirst();
	}

	/** @return the meaning of a part of a start-up; its word stands first in a check */
	private static Optional<String> phase(String rules, int offset, String word) {
		int start = offset;
		while (start > 0 && isWord(rules.charAt(start - 1))) {
			start--;
		}
		boolean first = CHECK.matcher(rules.substring(0, start)).find();
		return Arrays.stream(StartUpPhase.values()).filter(p -> first && p.name().equals(word)).findFirst()
				.map(ThingWords::of);
	}

	private static Optional<String> caution(String rules, int offset, String word) {
		int start = offset;
		while (start > 0 && isWord(rules.charAt(start - 1))) {
			start--;
		}
		boolean first = CAUTION.matcher(rules.substring(0, start)).find();
		return Arrays.stream(CautionKind.values()).filter(k -> first && k.name().equals(word)).findFirst()
				.map(ThingWords::of);
	}

	/** @return the word that covers {@code offset}, or "" */
	static String wordAt(String text, int offset) {
		int start = offset;
		int end = offset;
		while (start > 0 && isWord(text.charAt(start - 1))) {
			start--;
		}
		while (end < text.length() && isWord(text.charAt(end))) {
			end++;
		}
		return text.substring(start, end);
	}

	/** @return the kind of fact whose pattern was opened last before {@code offset} */
	Optional<FactKind> kindBefore(String rules, int offset) {
		Matcher opened = OPENED.matcher(rules.substring(0, offset));
		Optional<FactKind> last = Optional.empty();
		while (opened.find()) {
			Optional<FactKind> kind = catalogue.kind(opened.group(1));
			last = kind.isPresent() ? kind : last;
		}
		return last;
	}

	private static boolean isWord(char c) {
		return Character.isLetterOrDigit(c) || c == '_';
	}

	private Optional<String> ofChoice(String word, Optional<FactKind> kind) {
		Stream<Domain> near = kind.stream().flatMap(k -> k.fields().stream()).map(Field::domain);
		Stream<Domain> anywhere = Stream.concat(catalogue.settings().stream().map(Setting::domain),
				catalogue.kinds().stream().flatMap(k -> k.fields().stream()).map(Field::domain));
		return Stream.concat(near, anywhere).filter(Domain.Choices.class::isInstance)
				.flatMap(d -> ((Domain.Choices) d).options().stream()).filter(o -> o.id().equals(word)).findFirst()
				.map(o -> ThingWords.line(o.label(), o.meaning()));
	}
}
