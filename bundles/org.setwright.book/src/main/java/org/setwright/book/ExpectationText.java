package org.setwright.book;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.book.JobCase.DecidedBy;
import org.setwright.book.JobCase.Expectation;
import org.setwright.book.JobCase.Settled;
import org.setwright.book.yaml.YamlWords;
import org.setwright.trade.catalogue.Dimension;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Value;

/** What a setting is expected to come to, as it is written on one line. */
public final class ExpectationText {
	static final String GAP = "gap";
	static final String DISPUTE = "dispute";
	static final String NOT_NEEDED = "not needed";
	static final String NOT_SET = "not set";
	static final String IS = "is";
	static final String BY = "by";
	/** The words that stand for no value. */
	static final List<String> WORDS = List.of(GAP, DISPUTE, NOT_NEEDED, NOT_SET);
	private static final Pattern WITHIN = Pattern.compile("(?i)(.*\\S)\\s*(?:\\bwithin\\b|±|\\+/?-)\\s*(\\S.*)");

	private ExpectationText() {
	}

	/** @return the words that stand for no value of a setting */
	public static List<String> noValues() {
		return WORDS;
	}

	/**
	 * @param text a value of {@code setting}, perhaps with how far it may be off, or one of the words for no value
	 * @param at kept as its place
	 * @return what it means, or empty when it means nothing
	 */
	public static Optional<Expectation> read(Setting setting, String text, Position at) {
		return switch (Keys.normal(text)) {
			case GAP -> Optional.of(new JobCase.Gap(at));
			case DISPUTE -> Optional.of(new JobCase.Dispute(at));
			case NOT_NEEDED -> Optional.of(new JobCase.NotNeeded(at));
			case NOT_SET -> Optional.of(new JobCase.NotSet(at));
			default -> settled(setting, text, at).map(s -> s);
		};
	}

	/** @return every way to expect something of {@code setting} that can be listed */
	public static List<String> offered(Setting setting) {
		List<String> offered = new java.util.ArrayList<>(setting.domain().listed().stream().map(Value::text).toList());
		offered.addAll(WORDS);
		return offered;
	}

	static Optional<Settled> settled(Setting setting, String text, Position at) {
		if (text.length() > JobKeys.LONGEST_VALUE || JobKeys.says(JobKeys.UNKNOWN, text)) {
			return Optional.empty();
		}
		Optional<Settled> exact = setting.domain().read(text).map(v -> new Settled(v, at));
		Matcher within = WITHIN.matcher(text.strip());
		if (exact.isPresent() || difference(setting.domain()).isEmpty() || !within.matches()) {
			return exact;
		}
		return setting.domain().read(within.group(1)).flatMap(value -> Quantity.parse(within.group(2), difference(setting.domain()).get())
				.filter(q -> q.number() > 0).map(q -> new Settled(value, Optional.of(q), at)));
	}

	/** @return the value before a tolerance that cannot be read, or empty when the fault is elsewhere */
	static Optional<Misfit> badTolerance(Setting setting, String text) {
		Matcher within = WITHIN.matcher(text.strip());
		if (difference(setting.domain()).isEmpty() || !within.matches() || setting.domain().read(within.group(1)).isEmpty()) {
			return Optional.empty();
		}
		String units = org.setwright.trade.catalogue.Unit.measuring(difference(setting.domain()).get()).stream().map(u -> u.symbol())
				.filter(u -> !u.isEmpty()).reduce((a, b) -> a + " or " + b).map(u -> " with its unit (" + u + ")").orElse("");
		return Optional.of(new Misfit(Misfit.quoted(within.group(2)) + " does not say how far " + setting.label() + " may be off.",
				"Write a number above 0" + units + " after \"within\"."));
	}

	/** What a difference of two values is measured in; empty where there is no such thing. */
	private static Optional<Dimension> difference(Domain domain) {
		if (domain instanceof Domain.Measure measure) {
			Dimension dimension = measure.unit().dimension();
			return Optional.of(dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension);
		}
		return domain instanceof Domain.Whole ? Optional.of(Dimension.NONE) : Optional.empty();
	}

	/** @return as it stands after the setting's name in a job file */
	static String written(Expectation expectation, boolean inBraces) {
		if (expectation instanceof DecidedBy decided) {
			String is = decided.is().map(s -> IS + ": " + YamlWords.of(s.text(), true) + ", ").orElse("");
			return "{ " + is + BY + ": " + YamlWords.of(decided.rule(), true) + " }";
		}
		return YamlWords.of(expectation.text(), inBraces);
	}
}
