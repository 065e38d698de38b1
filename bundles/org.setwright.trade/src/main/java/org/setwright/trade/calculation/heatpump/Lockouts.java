package org.setwright.trade.calculation.heatpump;

import org.setwright.trade.calculation.Range;

/**
 * Outdoor temperatures beyond which auxiliary heat, or the compressor, is kept off. The outdoor unit's maker goes first.
 * <p>
 * Sources: auxiliary heat stays off while the heat pump alone can carry the load, except in defrost: ASHRAE 90.1-2016
 * section 6.4.3.5, and IECC section C403.4.1.1 (both read in secondary copies), residential R403.1.2 (from memory).
 * Compressor limits: a best-practice installation guide for existing homes (read).
 */
public final class Lockouts {
	private static final Range MARGIN = new Range("margin over the balance point", 0, 20, "F°");
	private static final double STANDARD_FAHRENHEIT = 17;
	private static final double COLD_CLIMATE_FAHRENHEIT = 5;

	private Lockouts() {
	}

	/**
	 * @param balancePointFahrenheit -80 to 140 °F
	 * @param marginFahrenheitDegrees for gusts, uncertainty and recovery, 0 to 20 F°; each degree costs running hours
	 * @return outdoor temperature above which auxiliary heat is kept off (defrost and emergency excepted), in °F, rounded
	 *         up to a whole degree so that rounding cannot leave a house cold
	 */
	public static int auxiliaryFahrenheit(double balancePointFahrenheit, double marginFahrenheitDegrees) {
		return (int) Math.ceil(
				Range.OUTDOOR_FAHRENHEIT.check(balancePointFahrenheit) + MARGIN.check(marginFahrenheitDegrees) - 1e-9);
	}

	/**
	 * With electric auxiliary heat every hour of compressor heat is gain, so the compressor is locked out only where its
	 * maker says so, and never above this.
	 *
	 * @param coldClimateUnit whether the unit is made for heating in hard frost
	 * @return the warmest sensible compressor lockout, in °F: 17 °F (cold-climate unit: 5 °F), or the balance point when
	 *         that is colder; a fraction of a degree is cut off downwards
	 */
	public static int warmestCompressorFahrenheit(double balancePointFahrenheit, boolean coldClimateUnit) {
		double limit = coldClimateUnit ? COLD_CLIMATE_FAHRENHEIT : STANDARD_FAHRENHEIT;
		return (int) Math.floor(Math.min(limit, Range.OUTDOOR_FAHRENHEIT.check(balancePointFahrenheit)));
	}
}
