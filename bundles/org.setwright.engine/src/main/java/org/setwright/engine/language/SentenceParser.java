package org.setwright.engine.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.engine.language.Sentence.Piece;
import org.setwright.trade.catalogue.Catalogue;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;

/** Reads text in quotes with readings between braces, and checks each of them. */
final class SentenceParser {
	private static final String HOW = "Between braces stands an answer {$name} or {$fact.field}, a quantity {20 F°} or {15..20 F°}, or {setting WORD}.";
	private static final int LONGEST = 600;
	private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)\\}");
	private static final Pattern ANSWER = Pattern.compile("\\s*(\\$\\w+)(?:\\s*\\.\\s*(\\w+))?\\s*");
	private static final Pattern SETTING = Pattern.compile("\\s*setting\\s+(\\w+)\\s*");
	private static final Pattern RANGE = Pattern.compile("\\s*([-+]?[\\d.,]*\\d)\\s*\\.\\.\\s*(.*)");

	private final TokenReader in;
	private final Catalogue catalogue;
	private final OperandParser operands;

	SentenceParser(TokenReader in, Catalogue catalogue, OperandParser operands) {
		this.in = in;
		this.catalogue = catalogue;
		this.operands = operands;
	}

	/** Reads the text of {@code quoted}; what is wrong with it is recorded. @param purpose what it is for, "what to see" */
	Sentence read(Token quoted, String purpose, Scope scope) {
		List<Piece> pieces = new ArrayList<>();
		if (quoted.text().length() > LONGEST) {
			in.fault(quoted, "This text is longer than " + LONGEST + " characters, and nobody reads that on a ladder.", "Split it into two checks.");
			return new Sentence(pieces);
		}
		Matcher braces = BRACES.matcher(quoted.text());
		int from = 0;
		while (braces.find()) {
			words(quoted, from, braces.start(), pieces);
			reading(in.inside(quoted, braces.start(1), braces.end(1)), scope).ifPresent(pieces::add);
			from = braces.end();
		}
		words(quoted, from, quoted.text().length(), pieces);
		if (quoted.text().isBlank()) {
			in.fault(quoted, "The text that should say " + purpose + " is empty.", "Say it in a sentence a technician can follow.");
		}
		return new Sentence(pieces);
	}

	private void words(Token quoted, int from, int to, List<Piece> pieces) {
		String words = quoted.text().substring(from, to);
		for (int i = 0; i < words.length(); i++) {
			if (words.charAt(i) == '{' || words.charAt(i) == '}') {
				in.fault(in.inside(quoted, from + i, from + i + 1), words.charAt(i) == '{' ? "This brace is never closed."
						: "This brace was never opened.", HOW);
				return;
			}
		}
		if (!words.isEmpty()) {
			pieces.add(new Sentence.Words(words));
		}
	}

	private Optional<Piece> reading(Token inside, Scope scope) {
		Matcher answer = ANSWER.matcher(inside.text());
		Matcher setting = SETTING.matcher(inside.text());
		if (answer.matches()) {
			Token name = in.inside(inside, answer.start(1), answer.end(1));
			Optional<Token> field = answer.group(2) == null ? Optional.empty()
					: Optional.of(in.inside(inside, answer.start(2), answer.end(2)));
			return operands.bound(name, field, scope).map(Sentence.Reading::new);
		} else if (setting.matches()) {
			return setting(in.inside(inside, setting.start(1), setting.end(1)));
		}
		return quantity(inside);
	}

	private Optional<Piece> setting(Token word) {
		Optional<Setting> setting = catalogue.setting(word.text());
		if (setting.isEmpty()) {
			in.unknownWord(word, "There is no setting \"" + word.text() + "\".", catalogue.settings().stream().map(Setting::id).toList());
		}
		return setting.map(Sentence.OfSetting::new);
	}

	private Optional<Piece> quantity(Token inside) {
		Matcher range = RANGE.matcher(inside.text());
		Optional<Quantity> most = Quantity.parse((range.matches() ? range.group(2) : inside.text()).strip());
		if (most.isEmpty()) {
			in.fault(inside, "\"" + inside.text() + "\" is nothing that can be read here.", HOW);
			return Optional.empty();
		} else if (!range.matches()) {
			return Optional.of(new Sentence.Given(most.get(), Optional.empty()));
		}
		Optional<Quantity> least = Quantity.parse(range.group(1) + " " + most.get().unit().symbol());
		if (least.isEmpty() || least.get().number() >= most.get().number()) {
			in.fault(inside, "The range " + inside.text() + " does not go up.", "Write the smaller number first: {15..20 F°}.");
			return Optional.empty();
		}
		return Optional.of(new Sentence.Given(least.get(), most));
	}
}
