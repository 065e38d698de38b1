package org.setwright.trade.calculation.humidity;

import org.setwright.trade.calculation.Range;

/**
 * Windows by number of panes, with the heat they let through at the centre of clear glass: the worst spot of a window,
 * its edge and frame, is colder.
 * <p>
 * Source: heat transfer coefficients of clear glass with 1/2 inch gaps, ASHRAE Handbook Fundamentals, chapter 15, winter
 * conditions (from memory); film inside 1.46 Btu/h ft2 °F, same chapter (from memory).
 */
public enum WindowGlass {
	SINGLE(1.04), DOUBLE(0.49), TRIPLE(0.31);

	private static final double INSIDE_FILM = 1.46;
	private static final Range INDOOR = new Range("indoor temperature", 40, 95, "°F");

	private final double coefficient;

	WindowGlass(double coefficient) {
		this.coefficient = coefficient;
	}

	/** @return heat transfer coefficient at the centre of the glass, in Btu/h ft2 °F */
	public double coefficient() {
		return coefficient;
	}

	/**
	 * @param indoorFahrenheit 40 to 95 °F
	 * @param outdoorFahrenheit -80 to 140 °F
	 * @return temperature of the glass inside, at its centre, in °F
	 */
	public double insideFahrenheit(double indoorFahrenheit, double outdoorFahrenheit) {
		return INDOOR.check(indoorFahrenheit) - coefficient / INSIDE_FILM
				* (indoorFahrenheit - Range.OUTDOOR_FAHRENHEIT.check(outdoorFahrenheit));
	}
}
