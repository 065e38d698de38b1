package org.setwright.bench.figures;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Facts;
import org.setwright.bench.words.Span;
import org.setwright.engine.outcome.SettingOutcome;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Field;
import org.setwright.trade.catalogue.JobField;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** What stands between the signs of an expression: numbers with units, answers of the job, settings, and words. */
final class Operands {
	private static final Pattern NUMBER = Pattern.compile("(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?");
	private static final Pattern WORDS = Pattern.compile("\"[^\"]*\"|[\\p{L}][\\p{L}\\d'-]*(?: (?!in\\b|is\\b)[\\p{L}][\\p{L}\\d'-]*)*");
	private final AtHand hand;
	private final Facts facts;

	Operands(AtHand hand) {
		this.hand = hand;
		facts = new Facts(hand.ground().catalogue());
	}

	/** An operand and how many characters it takes. @param field where its value comes from, to read words beside it by */
	record Taken(Figure figure, int length, Optional<org.setwright.trade.catalogue.Domain> domain) {
	}

	/** @return the operand with which {@code rest} begins; empty when with none */
	Optional<Taken> take(Span rest) throws Misread {
		Matcher number = NUMBER.matcher(rest.text());
		if (number.lookingAt()) {
			return Optional.of(number(rest, number));
		}
		Optional<Facts.Meant> meant = facts.begun(rest.text());
		Optional<Setting> setting = setting(rest);
		if (setting.isPresent() && meant.map(Facts.Meant::length).orElse(0) <= setting.get().label().length()) {
			return Optional.of(new Taken(comesTo(setting.get()), setting.get().label().length(), Optional.of(setting.get().domain())));
		} else if (meant.isPresent()) {
			return Optional.of(fact(meant.get(), rest));
		}
		Matcher words = WORDS.matcher(rest.text());
		if (words.lookingAt()) {
			return Optional.of(new Taken(new Figure.Word(new Value.Words(new Span(words.group(), 0).bare().text())), words.end(), Optional.empty()));
		}
		return Optional.empty();
	}

	private Optional<Setting> setting(Span rest) {
		return hand.ground().catalogue().settings().stream().filter(s -> rest.begins(s.label())).max(Comparator.comparingInt(s -> s.label().length()));
	}

	private Figure comesTo(Setting setting) {
		Optional<SettingOutcome> outcome = hand.outcome().setting(setting);
		return outcome.flatMap(SettingOutcome::value).map(Figure::of)
				.orElseGet(() -> new Figure.Open(Set.of(setting.label() + (outcome.isPresent() ? " is not settled" : " is not needed"))));
	}

	private Taken fact(Facts.Meant meant, Span rest) throws Misread {
		FactKind kind = meant.kind();
		List<Fact> all = hand.outcome().job().entry(kind).facts();
		Span words = rest.upTo(meant.length());
		if (meant.field().isEmpty()) {
			if (kind.many() && meant.number() == 0) {
				return new Taken(all.isEmpty() ? new Figure.Open(Set.of(JobField.presence(kind).label())) : Figure.Amount.plain(all.size()), meant.length(),
						Optional.empty());
			}
			throw words.misread("It is not said which answer about the " + kind.label() + " is meant.",
					"Write it after the name, for example \"" + words.text() + " " + kind.fields().get(0).label() + "\".");
		} else if (kind.many() && meant.number() == 0 && all.size() != 1) {
			throw words.misread("It is not said which of the " + kind.key() + " is meant.", "Write its number, for example \"" + kind.label() + " 1 "
					+ meant.field().get().label() + "\".");
		}
		int item = Math.max(0, meant.number() - 1);
		Field field = meant.field().get();
		JobField place = JobField.of(kind, item, field);
		Optional<Value> value = item < all.size() ? kind.answer(all.get(item), field).value() : Optional.empty();
		Figure figure = value.map(Figure::of).orElseGet(() -> new Figure.Open(Set.of(item < all.size() || all.isEmpty() ? place.label()
				: "there is no " + kind.label() + " " + (item + 1))));
		return new Taken(figure, meant.length(), Optional.of(field.domain()));
	}

	private static Taken number(Span rest, Matcher number) {
		double value = Double.parseDouble(number.group().replace(",", ""));
		int at = number.end();
		while (at < rest.text().length() && rest.text().charAt(at) == ' ') {
			at++;
		}
		int unitAt = at;
		Optional<Map.Entry<String, Unit>> unit = Arrays.stream(Unit.values()).flatMap(u -> u.spellings().stream().map(s -> Map.entry(s, u)))
				.filter(e -> !e.getKey().isEmpty() && stands(rest.text(), unitAt, e.getKey()))
				.max(Comparator.comparingInt((Map.Entry<String, Unit> e) -> e.getKey().length())
						.thenComparing(e -> rest.text().startsWith(e.getKey(), unitAt)).thenComparing(e -> e.getKey().equals(e.getValue().symbol())));
		return new Taken(new Figure.Amount(new Quantity(value, unit.map(Map.Entry::getValue).orElse(Unit.NONE))),
				unit.map(u -> unitAt + u.getKey().length()).orElse(number.end()), Optional.empty());
	}

	private static boolean stands(String text, int at, String unit) {
		int end = at + unit.length();
		return text.regionMatches(true, at, unit, 0, unit.length())
				&& (end >= text.length() || !Character.isLetterOrDigit(text.charAt(end)) && text.charAt(end) != '°'
						|| !Character.isLetter(unit.charAt(unit.length() - 1)));
	}
}
