package org.setwright.trade.calculation.airflow;

import org.setwright.trade.calculation.Range;

/**
 * Air pressure by altitude. Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3 (from memory; agrees with a
 * psychrometric library).
 */
public final class StandardAtmosphere {
	/** Standard pressure at sea level, in psi absolute. */
	public static final double SEA_LEVEL_PSI = 14.696;

	private static final Range ALTITUDE = new Range("altitude", -1500, 20_000, "ft");

	private StandardAtmosphere() {
	}

	/** @param altitudeFeet above sea level, -1500 to 20,000 ft @return standard pressure there, in psi absolute */
	public static double psi(double altitudeFeet) {
		return SEA_LEVEL_PSI * Math.pow(1 - 6.8754e-6 * ALTITUDE.check(altitudeFeet), 5.2559);
	}

	/** @param altitudeFeet -1500 to 20,000 ft @return how dense air is there against sea level, the warmth being equal */
	public static double densityFactor(double altitudeFeet) {
		return psi(altitudeFeet) / SEA_LEVEL_PSI;
	}
}
