package org.setwright.bench.figures;

import java.util.Optional;
import org.setwright.bench.figures.Figure.Amount;
import org.setwright.trade.catalogue.Dimension;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/** Arithmetic with units: what cannot be added or multiplied in the trade is refused, with the reason. */
final class Sums {
	private Sums() {
	}

	/** It makes no sense; the message says why, and the remedy what to write. */
	static final class Senseless extends Exception {
		private static final long serialVersionUID = 1L;
		private final String remedy;

		Senseless(String what, String remedy) {
			super(what, null, false, false);
			this.remedy = remedy;
		}

		String remedy() {
			return remedy;
		}
	}

	static Amount plus(Amount a, Amount b) throws Senseless {
		if (is(a, Dimension.TEMPERATURE) && is(b, Dimension.TEMPERATURE)) {
			throw new Senseless("Two temperatures cannot be added.", "Add a difference, written like 5 F° or 3 C°.");
		} else if (is(a, Dimension.TEMPERATURE) && is(b, Dimension.TEMPERATURE_DIFFERENCE)) {
			return moved(a, b, 1);
		} else if (is(b, Dimension.TEMPERATURE) && is(a, Dimension.TEMPERATURE_DIFFERENCE)) {
			return moved(b, a, 1);
		}
		return new Amount(new Quantity(number(a) + in(b, a, "added to"), a.quantity().unit()));
	}

	static Amount minus(Amount a, Amount b) throws Senseless {
		if (is(a, Dimension.TEMPERATURE) && is(b, Dimension.TEMPERATURE)) {
			Unit unit = a.quantity().unit() == Unit.FAHRENHEIT ? Unit.FAHRENHEIT_DEGREES : Unit.CELSIUS_DEGREES;
			return new Amount(new Quantity(unit.fromBase(a.quantity().unit().toBase(number(a)) - b.quantity().unit().toBase(number(b))), unit));
		} else if (is(a, Dimension.TEMPERATURE) && is(b, Dimension.TEMPERATURE_DIFFERENCE)) {
			return moved(a, b, -1);
		}
		return new Amount(new Quantity(number(a) - in(b, a, "taken from"), a.quantity().unit()));
	}

	static Amount times(Amount a, Amount b) throws Senseless {
		if (is(a, Dimension.VOLTAGE) && is(b, Dimension.CURRENT) || is(b, Dimension.VOLTAGE) && is(a, Dimension.CURRENT)) {
			return new Amount(new Quantity(a.quantity().base() * b.quantity().base(), Unit.VOLT_AMPERE));
		} else if (!a.isPlain() && !b.isPlain()) {
			throw new Senseless(a.text() + " and " + b.text() + " cannot be multiplied here.", "Multiply by a plain number, or volts by amperes.");
		}
		Amount measured = a.isPlain() ? b : a;
		refuseTemperature(measured, "multiplied");
		return finite(number(a) * number(b), measured.quantity().unit());
	}

	static Amount over(Amount a, Amount b) throws Senseless {
		if (number(b) == 0) {
			throw new Senseless("Nothing can be divided by zero.", "Divide by another number.");
		} else if (b.isPlain()) {
			refuseTemperature(a, "divided");
			return finite(number(a) / number(b), a.quantity().unit());
		} else if (is(a, Dimension.APPARENT_POWER) && is(b, Dimension.VOLTAGE)) {
			return new Amount(new Quantity(a.quantity().base() / b.quantity().base(), Unit.AMPERE));
		} else if (is(a, Dimension.APPARENT_POWER) && is(b, Dimension.CURRENT)) {
			return new Amount(new Quantity(a.quantity().base() / b.quantity().base(), Unit.VOLT));
		}
		refuseTemperature(a, "divided");
		return finite(number(a) / in(b, a, "the measure of"), Unit.NONE);
	}

	static Amount negative(Amount a) {
		return new Amount(new Quantity(-number(a), a.quantity().unit()));
	}

	/** @return below 0, 0 or above 0 */
	static int compared(Amount a, Amount b) throws Senseless {
		in(b, a, "compared with");
		return Double.compare(a.quantity().base(), b.quantity().base());
	}

	/** @return the same amount in the unit written {@code unit}; empty when that does not measure it */
	static Optional<Amount> to(Amount a, String unit) {
		return Unit.written(unit, a.quantity().unit().dimension()).map(u -> new Amount(a.quantity().to(u)));
	}

	private static Amount moved(Amount temperature, Amount difference, int sign) {
		Unit unit = temperature.quantity().unit();
		double kelvin = difference.quantity().unit().toBase(number(difference));
		return new Amount(new Quantity(unit.fromBase(unit.toBase(number(temperature)) + sign * kelvin), unit));
	}

	private static double in(Amount b, Amount a, String verb) throws Senseless {
		if (a.quantity().unit().dimension() != b.quantity().unit().dimension()) {
			throw new Senseless(b.text() + " cannot be " + verb + " " + a.text() + ": one is " + dimension(a) + ", the other " + dimension(b) + ".",
					"Write both in units of the same kind.");
		}
		return b.quantity().in(a.quantity().unit());
	}

	private static String dimension(Amount amount) {
		return amount.isPlain() ? "a plain number" : amount.quantity().unit().dimension().label();
	}

	private static void refuseTemperature(Amount amount, String verb) throws Senseless {
		if (is(amount, Dimension.TEMPERATURE)) {
			throw new Senseless("A temperature cannot be " + verb + ".", "Take a difference of two temperatures first.");
		}
	}

	private static Amount finite(double number, Unit unit) throws Senseless {
		if (!Double.isFinite(number)) {
			throw new Senseless("The result is too large.", "Use smaller numbers.");
		}
		return new Amount(new Quantity(number, unit));
	}

	private static boolean is(Amount amount, Dimension dimension) {
		return amount.quantity().unit().dimension() == dimension;
	}

	private static double number(Amount amount) {
		return amount.quantity().number();
	}
}
