package org.setwright.trade.calculation.heatpump;

import org.setwright.trade.calculation.Range;

/**
 * How much heat a building needs at each outdoor temperature: a straight line from its load at one outdoor temperature
 * to none at the temperature where sun, people and appliances carry it.
 *
 * @param btuPerHour heat needed at {@code atFahrenheit}, 500 to 1,000,000 Btu/h
 * @param atFahrenheit outdoor temperature of that load, in °F
 * @param zeroFahrenheit outdoor temperature at which no heat is needed, 40 to 75 °F and above {@code atFahrenheit}
 */
public record LoadLine(double btuPerHour, double atFahrenheit, double zeroFahrenheit) {
	/** Where the line meets no load by appendix M, and by custom for a job whose own figure nobody knows, in °F. */
	public static final double USUAL_ZERO_FAHRENHEIT = 65;

	private static final Range LOAD = new Range("heating load", 500, 1_000_000, "Btu/h");
	private static final Range ZERO = new Range("outdoor temperature without heating load", 40, 75, "°F");
	private static final double CORRECTION = 0.77;
	private static final double RATING_FAHRENHEIT = 5;

	public LoadLine {
		LOAD.check(btuPerHour);
		Range.OUTDOOR_FAHRENHEIT.check(atFahrenheit);
		ZERO.check(zeroFahrenheit);
		if (atFahrenheit >= zeroFahrenheit) {
			throw new IllegalArgumentException("the load's outdoor temperature must be below " + zeroFahrenheit
					+ " °F, where no heat is needed, not " + atFahrenheit + " °F");
		}
	}

	/**
	 * The load a heat pump is rated against by 10 CFR 430 subpart B appendix M and AHRI 210/240-2017:
	 * {@code (65 - T) / (65 - design) * 0.77 * requirement}.
	 *
	 * @param designRequirementBtuPerHour design heating requirement, see {@link DesignRequirement}
	 */
	public static LoadLine appendixM(ClimateRegion region, double designRequirementBtuPerHour) {
		return new LoadLine(CORRECTION * designRequirementBtuPerHour, region.designFahrenheit(), USUAL_ZERO_FAHRENHEIT);
	}

	/**
	 * The load a heat pump is rated against by 10 CFR 430 subpart B appendix M1 and AHRI 210/240-2023 (the form from
	 * memory, the constants read): {@code (zero - T) / (zero - 5) * factor * cooling capacity}.
	 *
	 * @param coolingBtuPerHourAt95F rated cooling capacity at 95 °F; of a unit that only heats, heating capacity at 47 °F
	 */
	public static LoadLine appendixM1(ClimateRegion region, double coolingBtuPerHourAt95F, boolean variableSpeed) {
		return new LoadLine(region.slopeFactor(variableSpeed) * coolingBtuPerHourAt95F, RATING_FAHRENHEIT,
				region.zeroLoadFahrenheit());
	}

	/** @param outdoorFahrenheit -80 to 140 °F @return heat needed then, in Btu/h, never below 0 */
	public double at(double outdoorFahrenheit) {
		return Math.max(0, extended(Range.OUTDOOR_FAHRENHEIT.check(outdoorFahrenheit)));
	}

	/** @return the line at {@code outdoorFahrenheit}, running on below zero load */
	double extended(double outdoorFahrenheit) {
		return btuPerHour * (zeroFahrenheit - outdoorFahrenheit) / (zeroFahrenheit - atFahrenheit);
	}
}
