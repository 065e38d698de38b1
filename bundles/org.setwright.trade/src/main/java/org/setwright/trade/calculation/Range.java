package org.setwright.trade.calculation;

import java.math.BigDecimal;

/**
 * What a calculation accepts for one input, so that a number in the wrong unit is refused where it enters.
 *
 * @param what the input, as the start of a sentence: "outdoor temperature"
 * @param least smallest value accepted
 * @param most largest value accepted
 * @param unit written after numbers; empty for a plain number
 */
public record Range(String what, double least, double most, String unit) {

	/** Outdoor air temperature, in °F. */
	public static final Range OUTDOOR_FAHRENHEIT = new Range("outdoor temperature", -80, 140, "°F");

	public Range {
		if (!(least <= most)) {
			throw new IllegalArgumentException(what + ": least " + least + " must not exceed most " + most);
		}
	}

	/**
	 * @return {@code value} itself
	 * @throws IllegalArgumentException naming the value and the limits, when it is outside them or not a number
	 */
	public double check(double value) {
		if (value >= least && value <= most) {
			return value;
		}
		throw new IllegalArgumentException(
				what + " must be from " + written(least) + " to " + written(most) + ", not " + written(value));
	}

	private String written(double value) {
		String digits = Double.isFinite(value) ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString()
				: Double.toString(value);
		return unit.isEmpty() ? digits : digits + " " + unit;
	}
}
