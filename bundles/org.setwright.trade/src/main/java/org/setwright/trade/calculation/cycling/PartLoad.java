package org.setwright.trade.calculation.cycling;

import org.setwright.trade.calculation.Range;

/**
 * What starting and stopping costs: {@code PLF = 1 - Cd (1 - CLF)}.
 * <p>
 * Source: AHRI 210/240 and 10 CFR 430 subpart B appendices M and M1; default degradation coefficients as read in an open
 * simulation program's source, which cites AHRI 210/240.
 */
public final class PartLoad {
	/** Default degradation coefficient: heating, and cooling up to the 2017 edition. */
	public static final double USUAL_DEGRADATION = 0.25;
	/** Default degradation coefficient of single-stage cooling, AHRI 210/240-2023 section 6.1.3.1. */
	public static final double COOLING_DEGRADATION_2023 = 0.20;

	private static final Range LOAD_FACTOR = new Range("load factor", 0, 1, "");
	private static final Range DEGRADATION = new Range("degradation coefficient", 0, 0.5, "");

	private PartLoad() {
	}

	/**
	 * @param loadFactor load over steady capacity (CLF or HLF), 0 to 1
	 * @param degradation coefficient Cd, 0 to 0.5
	 * @return efficiency while cycling over steady efficiency, 0.5 to 1
	 */
	public static double factor(double loadFactor, double degradation) {
		return 1 - DEGRADATION.check(degradation) * (1 - LOAD_FACTOR.check(loadFactor));
	}

	/** @return share of the time it runs, 0 to 1: a little more than {@code loadFactor} (same ranges as {@link #factor}) */
	public static double runTimeFraction(double loadFactor, double degradation) {
		return loadFactor / factor(loadFactor, degradation);
	}
}
