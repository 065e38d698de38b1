package org.setwright.bench.figures;

import java.util.Comparator;
import java.util.Optional;
import org.setwright.bench.figures.Operands.Taken;
import org.setwright.bench.hand.AtHand;
import org.setwright.bench.told.Misread;
import org.setwright.bench.words.Facts;
import org.setwright.bench.words.Span;
import org.setwright.book.Misfit;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.catalogue.Value;

/** Works out one expression: + - * /, brackets, comparisons, and "in" with a unit. */
public final class Expression {
	private static final String HOW = "Write an answer of the job, a setting, or a number with its unit, joined by + - * / or compared by = < >.";
	private static final String[] COMPARISONS = { "<=", ">=", "!=", "==", "=", "<", ">" };
	private final Span all;
	private final Operands operands;
	private Span rest;
	private Optional<Domain> domain = Optional.empty();
	private int depth;

	private Expression(Span all, AtHand hand) {
		this.all = all;
		rest = all;
		operands = new Operands(hand);
	}

	/** @return what {@code typed} comes to on the job at hand, in words */
	public static String of(Span typed, AtHand hand) throws Misread {
		Expression expression = new Expression(typed.strip(), hand);
		Figure figure = expression.comparison();
		if (!expression.rest.isEmpty()) {
			throw expression.rest.misread("Nothing can be made of " + Misfit.quoted(expression.rest.text()) + " here.", HOW);
		}
		if (expression.domain.isEmpty() && figure instanceof Figure.Word word && word.value() instanceof Value.Words) {
			new Facts(hand.ground().catalogue()).meant(expression.all);
		}
		return figure.text();
	}

	private Figure comparison() throws Misread {
		Figure left = converted();
		Optional<Domain> of = domain;
		for (String sign : COMPARISONS) {
			int at = rest.start();
			if (take(sign)) {
				Figure right = right(of);
				return compared(left, sign, right, of.or(() -> domain), at);
			}
		}
		if (rest.begins("is")) {
			int at = rest.start();
			rest = rest.after("is");
			return compared(left, "=", right(of), of, at);
		}
		return left;
	}

	/** A word of the left side's own before anything else: it may hold signs. */
	private Figure right(Optional<Domain> of) throws Misread {
		Optional<Value> own = of.stream().flatMap(d -> d.listed().stream())
				.filter(v -> rest.begins(v.text())).max(Comparator.comparingInt(v -> v.text().length()));
		if (own.isPresent() && !(own.get() instanceof Value.Count)) {
			rest = rest.after(own.get().text());
			return Figure.of(own.get());
		}
		return converted();
	}

	private Figure compared(Figure left, String sign, Figure right, Optional<Domain> of, int at) throws Misread {
		if (left instanceof Figure.Open a) {
			return right instanceof Figure.Open b ? a.and(b) : a;
		} else if (right instanceof Figure.Open b) {
			return b;
		} else if (left instanceof Figure.Amount a && right instanceof Figure.Amount b) {
			int order = sum(() -> Sums.compared(a, b), at);
			return flag(switch (sign) {
				case "<" -> order < 0;
				case "<=" -> order <= 0;
				case ">" -> order > 0;
				case ">=" -> order >= 0;
				case "!=" -> order != 0;
				default -> order == 0;
			});
		} else if (!sign.endsWith("=") || sign.startsWith("<") || sign.startsWith(">") || left.getClass() != right.getClass()) {
			throw new Misread(at, at + sign.length(), left.text() + " and " + right.text() + " cannot be compared like this.",
					"Compare numbers of the same kind, or words with = or !=.");
		}
		Value a = read(((Figure.Word) left).value(), of);
		Value b = read(((Figure.Word) right).value(), of);
		if (of.isPresent() && (a.getClass() != b.getClass())) {
			Value stranger = b instanceof Value.Words ? b : a;
			throw new Misread(at, all.end(), "That is never " + Misfit.quoted(stranger.text()) + ".", "Write " + of.get().allowed() + ".");
		}
		return flag(a.same(b) != sign.equals("!="));
	}

	private static Value read(Value value, Optional<Domain> of) {
		return value instanceof Value.Words words ? of.flatMap(d -> d.read(words.words())).orElse(value) : value;
	}

	private static Figure flag(boolean yes) {
		return new Figure.Word(new Value.Flag(yes));
	}

	private Figure converted() throws Misread {
		Figure figure = sum();
		while (rest.begins("in")) {
			Span unit = rest.after("in");
			int length = unit.text().length();
			while (length > 0 && figure instanceof Figure.Amount amount && Sums.to(amount, unit.text().substring(0, length)).isEmpty()) {
				length--;
			}
			if (figure instanceof Figure.Amount amount) {
				if (length == 0 || unit.isEmpty()) {
					throw unit.misread(amount.text() + " cannot be shown in " + Misfit.quoted(unit.text()) + ".", "Write one of: " + Unit
							.measuring(amount.quantity().unit().dimension()).stream().map(Unit::symbol).reduce((a, b) -> a + ", " + b).orElse("") + ".");
				}
				figure = Sums.to(amount, unit.text().substring(0, length)).orElseThrow();
				rest = unit.from(length);
			} else {
				rest = unit.from(length);
			}
		}
		return figure;
	}

	private Figure sum() throws Misread {
		Figure left = product();
		for (;;) {
			int at = rest.start();
			if (take("+")) {
				left = both(left, product(), Sums::plus, at);
			} else if (take("-") || take("–")) {
				left = both(left, product(), Sums::minus, at);
			} else {
				return left;
			}
		}
	}

	private Figure product() throws Misread {
		Figure left = factor();
		for (;;) {
			int at = rest.start();
			if (take("*") || take("×")) {
				left = both(left, factor(), Sums::times, at);
			} else if (take("/")) {
				left = both(left, factor(), Sums::over, at);
			} else {
				return left;
			}
		}
	}

	private Figure factor() throws Misread {
		int at = rest.start();
		if (depth > 50) {
			throw rest.misread("This has too many brackets.", "Ask for a part of it.");
		} else if (take("(")) {
			depth++;
			Figure inner = comparison();
			depth--;
			if (!take(")")) {
				throw new Misread(rest.isEmpty() ? all.end() : rest.start(), rest.isEmpty() ? all.end() : rest.start() + 1, "A bracket is not closed.",
						"Write ) where it ends.");
			}
			return inner;
		} else if (take("-")) {
			depth++;
			Figure inner = factor();
			depth--;
			return inner instanceof Figure.Amount amount ? Sums.negative(amount) : refused(inner, at);
		}
		Optional<Taken> taken = rest.isEmpty() ? Optional.empty() : operands.take(rest);
		if (taken.isEmpty()) {
			throw rest.isEmpty() ? new Misread(all.end(), all.end(), "Something is missing at the end.", HOW)
					: rest.misread("Nothing can be made of " + Misfit.quoted(rest.text()) + " here.", HOW);
		}
		rest = rest.from(taken.get().length());
		domain = taken.get().domain().or(() -> domain);
		return taken.get().figure();
	}

	private Figure refused(Figure figure, int at) throws Misread {
		if (figure instanceof Figure.Open) {
			return figure;
		}
		throw new Misread(at, at + 1, "A minus belongs before a number.", HOW);
	}

	private interface Sum<T> {
		T of() throws Sums.Senseless;
	}

	private interface TwoFigures {
		Figure.Amount of(Figure.Amount a, Figure.Amount b) throws Sums.Senseless;
	}

	private Figure both(Figure left, Figure right, TwoFigures sum, int at) throws Misread {
		if (left instanceof Figure.Open a) {
			return right instanceof Figure.Open b ? a.and(b) : a;
		} else if (right instanceof Figure.Open b) {
			return b;
		} else if (left instanceof Figure.Amount a && right instanceof Figure.Amount b) {
			return sum(() -> sum.of(a, b), at);
		}
		Figure words = left instanceof Figure.Word ? left : right;
		throw new Misread(at, at + 1, Misfit.quoted(words.text()) + " is no number to reckon with.", HOW);
	}

	private static <T> T sum(Sum<T> sum, int at) throws Misread {
		try {
			return sum.of();
		} catch (Sums.Senseless senseless) {
			throw new Misread(at, at + 1, senseless.getMessage(), senseless.remedy());
		}
	}

	private boolean take(String sign) {
		boolean there = rest.text().startsWith(sign);
		if (there) {
			rest = rest.from(sign.length());
		}
		return there;
	}
}
