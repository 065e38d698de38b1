package org.setwright.trade.calculation.clock;

import java.time.Duration;

/** What a power cut does to a controller's clock and schedule. Common practice. */
public enum PowerCut {
	/** The clock ran on its reserve. */
	CLOCK_KEPT,
	/** The clock stopped, but fetches the time by itself once power and network are back. */
	CLOCK_FETCHED,
	/** The clock stopped: somebody has to set it, or the schedule runs late by the length of the cut. */
	CLOCK_TO_BE_SET;

	/**
	 * @param cut how long power was away, not negative
	 * @param reserve how long the clock runs without power, not negative: 0 without battery or capacitor
	 * @param fetchesTime whether the controller gets the time from a network
	 */
	public static PowerCut after(Duration cut, Duration reserve, boolean fetchesTime) {
		if (cut.isNegative() || reserve.isNegative()) {
			throw new IllegalArgumentException("durations must not be negative: cut " + cut + ", reserve " + reserve);
		}
		if (cut.compareTo(reserve) <= 0) {
			return CLOCK_KEPT;
		}
		return fetchesTime ? CLOCK_FETCHED : CLOCK_TO_BE_SET;
	}
}
