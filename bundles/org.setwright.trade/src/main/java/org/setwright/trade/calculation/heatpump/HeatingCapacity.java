package org.setwright.trade.calculation.heatpump;

import java.util.function.DoubleUnaryOperator;
import org.setwright.trade.calculation.Range;

/**
 * What an air-source heat pump delivers at each outdoor temperature, interpolated between its rating points: a straight
 * line through 17 °F and 47 °F, but between 17 °F and 45 °F, where the outdoor coil frosts, a line through 17 °F and
 * 35 °F. At 45 °F the two do not meet; the rating procedure has the step too.
 * <p>
 * Below 17 °F the straight line runs on only downwards: a unit stated to deliver more at 17 °F than at 47 °F (full speed
 * against nominal speed) is taken to deliver no more than its 17 °F figure.
 * <p>
 * Source: 10 CFR 430 subpart B appendix M, section 4.2.1, as read in an open simulation program's source.
 *
 * @param btuPerHourAt17F 500 to 1,000,000 Btu/h
 * @param btuPerHourAt35F 500 to 1,000,000 Btu/h, frosting and defrosting counted
 * @param btuPerHourAt47F 500 to 1,000,000 Btu/h
 */
public record HeatingCapacity(double btuPerHourAt17F, double btuPerHourAt35F, double btuPerHourAt47F) {
	/** Coldest rating point, and lower end of the frosting range, in °F. */
	public static final double COLD_FAHRENHEIT = 17;
	/** Warmest rating point, in °F. */
	public static final double MILD_FAHRENHEIT = 47;

	static final double FROST_ENDS_FAHRENHEIT = 45;
	private static final double FROST_FAHRENHEIT = 35;
	private static final double FROST_SHARE = 0.90;
	private static final Range CAPACITY = new Range("heating capacity", 500, 1_000_000, "Btu/h");

	public HeatingCapacity {
		CAPACITY.check(btuPerHourAt17F);
		CAPACITY.check(btuPerHourAt35F);
		CAPACITY.check(btuPerHourAt47F);
	}

	/** @return a capacity that takes no account of frost: one straight line through both points */
	public static HeatingCapacity straight(double btuPerHourAt17F, double btuPerHourAt47F) {
		return new HeatingCapacity(btuPerHourAt17F, between(btuPerHourAt17F, btuPerHourAt47F), btuPerHourAt47F);
	}

	/**
	 * @return a capacity with the 35 °F point the rating procedure assumes when none was tested: 90 % of the straight
	 *         line (from memory of appendix M, section 3.6.1)
	 */
	public static HeatingCapacity withUsualFrost(double btuPerHourAt17F, double btuPerHourAt47F) {
		return new HeatingCapacity(btuPerHourAt17F, FROST_SHARE * between(btuPerHourAt17F, btuPerHourAt47F),
				btuPerHourAt47F);
	}

	private static double between(double at17, double at47) {
		return at17 + (at47 - at17) * (FROST_FAHRENHEIT - COLD_FAHRENHEIT) / (MILD_FAHRENHEIT - COLD_FAHRENHEIT);
	}

	/** @param outdoorFahrenheit -80 to 140 °F @return heat delivered then, in Btu/h, never below 0 */
	public double at(double outdoorFahrenheit) {
		Range.OUTDOOR_FAHRENHEIT.check(outdoorFahrenheit);
		return Math.max(0, lineAt(outdoorFahrenheit).applyAsDouble(outdoorFahrenheit));
	}

	/** @return whether the figure for {@code outdoorFahrenheit} lies outside the rating points */
	public static boolean extrapolates(double outdoorFahrenheit) {
		return outdoorFahrenheit < COLD_FAHRENHEIT || outdoorFahrenheit > MILD_FAHRENHEIT;
	}

	/**
	 * What is left of the capacity near the temperature at which the unit stops itself: nothing at or below
	 * {@code stopsAt}, half up to {@code startsAgainAt}, all above (appendix M, section 4.2.1, same place).
	 *
	 * @return 0, 0.5 or 1
	 */
	public static double cutOutFactor(double outdoorFahrenheit, double stopsAtFahrenheit, double startsAgainAtFahrenheit) {
		if (stopsAtFahrenheit > startsAgainAtFahrenheit) {
			throw new IllegalArgumentException("a unit that stops at " + stopsAtFahrenheit
					+ " °F cannot start again below that, at " + startsAgainAtFahrenheit + " °F");
		}
		return outdoorFahrenheit <= stopsAtFahrenheit ? 0 : outdoorFahrenheit <= startsAgainAtFahrenheit ? 0.5 : 1;
	}

	/** @return the straight piece, running on both ways, that holds at {@code outdoorFahrenheit} */
	DoubleUnaryOperator lineAt(double outdoorFahrenheit) {
		if (outdoorFahrenheit > COLD_FAHRENHEIT && outdoorFahrenheit < FROST_ENDS_FAHRENHEIT) {
			return line(btuPerHourAt35F, FROST_FAHRENHEIT);
		}
		boolean upwards = outdoorFahrenheit <= COLD_FAHRENHEIT && btuPerHourAt17F > btuPerHourAt47F;
		return upwards ? t -> btuPerHourAt17F : line(btuPerHourAt47F, MILD_FAHRENHEIT);
	}

	private DoubleUnaryOperator line(double capacity, double fahrenheit) {
		double slope = (capacity - btuPerHourAt17F) / (fahrenheit - COLD_FAHRENHEIT);
		return t -> btuPerHourAt17F + slope * (t - COLD_FAHRENHEIT);
	}
}
