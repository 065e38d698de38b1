package org.setwright.book;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Which values a setting of the shop's own may take, where they are not listed: "yes or no", "0 to 4" or "34 °F to 45 °F". */
public final class ValuesText {
	/** How yes and no are written. */
	public static final String YES_OR_NO = "yes or no";
	/** What may be written, as the end of a sentence. */
	static final String HOW = "[ a, list ], yes or no, 0 to 4, or a range with units such as 34 °F to 45 °F";
	private static final Pattern RANGE = Pattern.compile("(\\S.*?)\\s+to\\s+(\\S.*)");
	private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:\\.\\d+)?");
	private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

	private ValuesText() {
	}

	/** @return the values that {@code text} allows, or empty when it says nothing of the kind, or a range runs backwards */
	public static Optional<Domain> read(String text) {
		String plain = Keys.normal(text).equals(YES_OR_NO) ? YES_OR_NO : text.strip();
		Matcher range = RANGE.matcher(plain);
		if (plain.equals(YES_OR_NO)) {
			return Optional.of(new Domain.YesNo());
		}
		return range.matches() ? between(range.group(1).strip(), range.group(2).strip()) : Optional.empty();
	}

	private static Optional<Domain> between(String least, String most) {
		if (WHOLE.matcher(least).matches() && WHOLE.matcher(most).matches()) {
			return Optional.<Domain>of(new Domain.Whole(Integer.parseInt(least), Integer.parseInt(most)))
					.filter(d -> Integer.parseInt(least) <= Integer.parseInt(most));
		}
		Optional<Quantity> upper = quantity(most);
		Optional<Quantity> lower = upper.flatMap(u -> NUMBER.matcher(least).matches() ? Optional.of(new Quantity(Double.parseDouble(least), u.unit()))
				: Quantity.parse(least, u.unit().dimension()));
		return lower.filter(l -> l.base() <= upper.get().base()).map(l -> new Domain.Measure(l.unit(), l.number(), upper.get().in(l.unit())));
	}

	private static Optional<Quantity> quantity(String text) {
		return NUMBER.matcher(text).matches() ? Optional.of(new Quantity(Double.parseDouble(text), Unit.NONE)) : Quantity.parse(text);
	}

	/** @return how {@code domain} is written, so that {@link #read} reads the same; "" for values that are listed, and for free words */
	public static String of(Domain domain) {
		if (domain instanceof Domain.Whole whole) {
			return whole.least() + " to " + whole.most();
		} else if (domain instanceof Domain.Measure measure) {
			return new Quantity(measure.least(), measure.unit()) + " to " + new Quantity(measure.most(), measure.unit());
		}
		return domain instanceof Domain.YesNo ? YES_OR_NO : "";
	}
}
