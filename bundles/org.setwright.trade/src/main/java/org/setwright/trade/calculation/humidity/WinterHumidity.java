package org.setwright.trade.calculation.humidity;

import org.setwright.trade.calculation.Range;

/**
 * How humid a house may be in winter before its windows run wet.
 * <p>
 * Source of the published limit: tables for double glazing and 70 °F indoors by the Minnesota Department of Public
 * Service, and one ascribed to ASHRAE (both read in secondary copies); taken at the lower value of each band they are one
 * straight line, {@code 25 % + 0.5 % per °F}.
 */
public final class WinterHumidity {
	private static final Range SURFACE = new Range("surface temperature", -80, 140, "°F");
	private static final Range INDOOR = new Range("indoor temperature", 40, 95, "°F");
	private static final double LEAST = 15;
	private static final double MOST = 40;

	private WinterHumidity() {
	}

	/** @param outdoorFahrenheit -80 to 140 °F @return published limit for double glazing, 15 to 40 %, relative humidity */
	public static double publishedPercent(double outdoorFahrenheit) {
		double line = 25 + 0.5 * Range.OUTDOOR_FAHRENHEIT.check(outdoorFahrenheit);
		return Math.min(MOST, Math.max(LEAST, line));
	}

	/**
	 * @param indoorFahrenheit 40 to 95 °F
	 * @param surfaceFahrenheit coldest surface the air touches, -80 to 140 °F
	 * @return relative humidity at which that surface begins to run wet, at most 100 %
	 */
	public static double condensationPercent(double indoorFahrenheit, double surfaceFahrenheit) {
		return Math.min(100, 100 * MoistAir.saturationPsi(SURFACE.check(surfaceFahrenheit))
				/ MoistAir.saturationPsi(INDOOR.check(indoorFahrenheit)));
	}

	/**
	 * The published limit, or less where the glass would run wet even at that: better glazing than the tables were made
	 * for does not raise it, because frames and edges may be no better.
	 *
	 * @param indoorFahrenheit 40 to 95 °F
	 * @param outdoorFahrenheit -80 to 140 °F
	 * @return highest relative humidity to keep indoors, in %, above 0 to 40
	 */
	public static double limitPercent(WindowGlass glazing, double indoorFahrenheit, double outdoorFahrenheit) {
		double glass = glazing.insideFahrenheit(indoorFahrenheit, outdoorFahrenheit);
		return Math.min(publishedPercent(outdoorFahrenheit), condensationPercent(indoorFahrenheit, glass));
	}
}
