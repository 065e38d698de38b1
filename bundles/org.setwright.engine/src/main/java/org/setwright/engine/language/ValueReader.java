package org.setwright.engine.language;

import java.util.List;
import java.util.Optional;
import org.setwright.engine.language.TokenReader.Lost;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** Reads one value written in a rule, and explains what is wrong with it. */
final class ValueReader {
	private final TokenReader in;

	ValueReader(TokenReader in) {
		this.in = in;
	}

	/**
	 * Reads the next value as one of {@code domain}.
	 *
	 * @param of what it is a value of, as an error names it: "stages of the outdoor unit"
	 * @return empty when it is not one; then the problem has been recorded
	 */
	Optional<Value> read(Domain domain, String of) throws Lost {
		Token token = in.next();
		boolean negative = token.is("-") && in.sees(Token.Kind.NUMBER);
		Token number = negative ? in.next() : token;
		return switch (token.kind()) {
			case WORD -> word(token, domain, of);
			case NUMBER -> number(token, token.text(), domain, of);
			case QUOTED -> quoted(token, domain, of);
			case SIGN -> negative ? number(token, "-" + number.text(), domain, of) : notAValue(token, domain);
			case VARIABLE, END -> notAValue(token, domain);
		};
	}

	private Optional<Value> notAValue(Token token, Domain domain) throws Lost {
		return in.lose(token, "Here should be a value, not " + token.shown() + ".", "Write " + allowed(domain) + ".");
	}

	private Optional<Value> word(Token token, Domain domain, String of) throws Lost {
		if (Vocabulary.remedyFor(token.text()).isPresent() || in.sees(".") || in.sees("(")) {
			return in.lose(token, "\"" + token.text() + in.next().text() + "\" is program code, and a rule cannot run any.",
					"Write " + allowed(domain) + ".");
		}
		if (domain instanceof Domain.Choices choices) {
			Optional<Value> found = choices.options().stream().filter(o -> o.id().equals(token.text())).findFirst()
					.map(Value.OneOf::new);
			if (found.isEmpty()) {
				in.unknownWord(token, "\"" + token.text() + "\" is not a value of " + of + ".", words(choices));
			}
			return found;
		}
		if (domain instanceof Domain.YesNo && (token.is("YES") || token.is("NO"))) {
			return Optional.of(new Value.Flag(token.is("YES")));
		}
		return wrong(token, domain, of);
	}

	private Optional<Value> number(Token token, String digits, Domain domain, String of) {
		if (domain instanceof Domain.Measure measure && measure.unit() != Unit.NONE) {
			String quantity = "\"" + digits + " " + measure.unit().symbol() + "\"";
			in.fault(token, of + " is a quantity, and " + digits + " has no unit.", "Write it in quotes with its unit: " + quantity + ".",
					token.text().equals(digits) ? List.of(quantity) : List.of());
			return Optional.empty();
		}
		return domain instanceof Domain.Measure || domain instanceof Domain.Whole
				? domain.read(digits).or(() -> wrong(token, domain, of))
				: wrong(token, domain, of);
	}

	private Optional<Value> quoted(Token token, Domain domain, String of) {
		if (domain instanceof Domain.Choices choices) {
			String remedy = domain.read(token.text()).map(v -> "Write " + v.plain() + " without quotes.")
					.orElse("Write one of: " + String.join(", ", words(choices)) + ".");
			in.fault(token, of + " takes a word of the catalogue, not text in quotes.", remedy,
					domain.read(token.text()).map(v -> List.of(v.plain().toString())).orElse(List.of()));
			return Optional.empty();
		}
		boolean inQuotes = domain instanceof Domain.Words
				|| domain instanceof Domain.Measure measure && measure.unit() != Unit.NONE;
		return inQuotes ? domain.read(token.text()).or(() -> wrong(token, domain, of)) : wrong(token, domain, of);
	}

	private Optional<Value> wrong(Token token, Domain domain, String of) {
		in.fault(token, token.shown() + " is not a value of " + of + ".", "Write " + allowed(domain) + ".");
		return Optional.empty();
	}

	private static List<String> words(Domain.Choices choices) {
		return choices.options().stream().map(Domain.Choices.Option::id).toList();
	}

	private static String allowed(Domain domain) {
		if (domain instanceof Domain.Choices choices) {
			return "one of: " + String.join(", ", words(choices));
		} else if (domain instanceof Domain.YesNo) {
			return "YES or NO";
		}
		return domain.allowed() + (domain instanceof Domain.Words
				|| domain instanceof Domain.Measure m && m.unit() != Unit.NONE ? ", in quotes" : "");
	}
}
