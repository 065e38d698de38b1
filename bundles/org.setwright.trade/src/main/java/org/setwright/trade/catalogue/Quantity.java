package org.setwright.trade.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number with its unit, kept as it was written. Two quantities are equal in rules when their {@link #base()} values
 * are equal, whatever unit each was written in.
 *
 * @param number finite
 * @param unit not null
 */
public record Quantity(double number, Unit unit) {
	private static final Pattern WRITTEN = Pattern.compile("([+-]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?)\\s*+(.*)");
	private static final double GRAIN = 1e6;

	public Quantity {
		Objects.requireNonNull(unit);
		if (!Double.isFinite(number)) {
			throw new IllegalArgumentException("a quantity needs a finite number, not " + number);
		}
	}

	/** @return the value in the dimension's base unit, rounded to a millionth so that conversions compare equal */
	public double base() {
		return Math.rint(unit.toBase(number) * GRAIN) / GRAIN + 0.0;
	}

	/** @return the number in {@code other}, which must measure the same dimension */
	public double in(Unit other) {
		if (other.dimension() != unit.dimension()) {
			throw new IllegalArgumentException(unit.symbol() + " does not convert to " + other.symbol());
		}
		return other == unit ? number : other.fromBase(unit.toBase(number));
	}

	/** @return the same quantity written in {@code other}, which must measure the same dimension */
	public Quantity to(Unit other) {
		return new Quantity(in(other), other);
	}

	/** @return whether both are the same amount of the same dimension */
	public boolean sameAmount(Quantity other) {
		return unit.dimension() == other.unit.dimension() && base() == other.base();
	}

	/**
	 * @param text for example "48 kBtu/h" or "1,500 ft2"
	 * @param dimension what the unit has to measure
	 * @return the quantity, or empty when it is no number or the unit is missing, unknown or of another dimension
	 */
	public static Optional<Quantity> parse(String text, Dimension dimension) {
		Matcher m = WRITTEN.matcher(text.strip());
		if (!m.matches()) {
			return Optional.empty();
		}
		double number = Double.parseDouble(m.group(1).replace(",", ""));
		return Double.isFinite(number) ? Unit.written(m.group(2), dimension).map(u -> new Quantity(number, u)) : Optional.empty();
	}

	/** @return the quantity {@code text} states in any unit by its usual sign, "20 F°" and not "20 F"; else empty */
	public static Optional<Quantity> parse(String text) {
		return Arrays.stream(Dimension.values()).flatMap(d -> parse(text, d).stream())
				.filter(q -> !q.unit().symbol().isEmpty() && text.endsWith(q.unit().symbol())).findFirst();
	}

	/** @return for example "48 kBtu/h"; at most four decimals */
	@Override
	public String toString() {
		String digits = new BigDecimal(number).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
		return unit == Unit.NONE ? digits : digits + (unit == Unit.PERCENT ? "" : " ") + unit.symbol();
	}
}
