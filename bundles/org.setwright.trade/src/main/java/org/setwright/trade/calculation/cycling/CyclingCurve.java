package org.setwright.trade.calculation.cycling;

import org.setwright.trade.calculation.Range;

/**
 * How a wall controller cycles equipment at part load: most often at half load, {@code N = 4 Nmax X (1 - X)} with the
 * run-time fraction X.
 * <p>
 * Sources: on and off times as in Henderson and Rengarajan, ASHRAE Transactions 102(1), 1996, read in an open simulation
 * program's source ("conventional thermostat curve"); the rate itself, NEMA DC 3 and Parken et al. 1977, from memory.
 *
 * @param mostCyclesPerHour what a cycle-rate entry sets: starts an hour at half load, 0.5 to 20
 */
public record CyclingCurve(double mostCyclesPerHour) {
	private static final Range RATE = new Range("cycle rate", 0.5, 20, "per hour");
	private static final Range FRACTION = new Range("run-time fraction", 0, 1, "");
	private static final Range MINUTES = new Range("cycle time", 0.1, 600, "min");
	private static final double QUARTER_HOUR = 15;

	public CyclingCurve {
		RATE.check(mostCyclesPerHour);
	}

	/** @return the curve of equipment seen to run {@code onMinutes} and rest {@code offMinutes} in turn, each 0.1 to 600 */
	public static CyclingCurve seen(double onMinutes, double offMinutes) {
		double cycle = MINUTES.check(onMinutes) + MINUTES.check(offMinutes);
		double fraction = onMinutes / cycle;
		return new CyclingCurve(60 / cycle / (4 * fraction * (1 - fraction)));
	}

	/** @param runTimeFraction 0 to 1 @return starts an hour, 0 at both ends */
	public double cyclesPerHour(double runTimeFraction) {
		return 4 * mostCyclesPerHour * FRACTION.check(runTimeFraction) * (1 - runTimeFraction);
	}

	/** @param runTimeFraction 0 to 1 @return minutes of each run; infinite at 1, where it never stops */
	public double onMinutes(double runTimeFraction) {
		return QUARTER_HOUR / (mostCyclesPerHour * (1 - FRACTION.check(runTimeFraction)));
	}

	/** @param runTimeFraction 0 to 1 @return minutes of each rest; infinite at 0, where it never starts */
	public double offMinutes(double runTimeFraction) {
		return QUARTER_HOUR / (mostCyclesPerHour * FRACTION.check(runTimeFraction));
	}

	/** @return the shortest run there can be, at the smallest load, in minutes */
	public double shortestOnMinutes() {
		return onMinutes(0);
	}
}
