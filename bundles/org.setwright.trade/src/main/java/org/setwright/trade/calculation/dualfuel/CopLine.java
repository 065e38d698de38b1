package org.setwright.trade.calculation.dualfuel;

import java.util.OptionalDouble;
import org.setwright.trade.calculation.Range;

/**
 * A heat pump's coefficient of performance over outdoor temperature: a straight line through its ratings.
 * Source: two-point interpolation, common practice.
 *
 * @param at17F coefficient at 17 °F, 0.5 to 15
 * @param at47F coefficient at 47 °F, not below {@code at17F}, at most 15
 */
public record CopLine(double at17F, double at47F) {
	private static final double COLD = 17;
	private static final double MILD = 47;

	public CopLine {
		DeliveredHeat.COP.check(at17F);
		DeliveredHeat.COP.check(at47F);
		if (at17F > at47F) {
			throw new IllegalArgumentException("the coefficient of performance at 17 °F must not exceed the one at 47 °F ("
					+ at47F + "), but is " + at17F);
		}
	}

	/** @param outdoorFahrenheit -80 to 140 °F @return the coefficient then, never below 0 */
	public double at(double outdoorFahrenheit) {
		return Math.max(0, at17F + (at47F - at17F) * (Range.OUTDOOR_FAHRENHEIT.check(outdoorFahrenheit) - COLD) / (MILD - COLD));
	}

	/** @return outdoor temperature at which the line has {@code cop}, in °F; empty when it is level */
	public OptionalDouble fahrenheitFor(double cop) {
		return at17F == at47F ? OptionalDouble.empty()
				: OptionalDouble.of(COLD + (MILD - COLD) * (cop - at17F) / (at47F - at17F));
	}

	/** @return whether {@code fahrenheit} lies outside the two ratings, so that the line is only a guess there */
	public static boolean extrapolates(double fahrenheit) {
		return fahrenheit < COLD || fahrenheit > MILD;
	}
}
