package org.setwright.trade.calculation.ventilation;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.setwright.trade.calculation.Range;

/**
 * Meets a ventilation need with a fan that is larger than needed and rests in between: the same air on average.
 * Source: ASHRAE 62.2-2016 section 4.5, averaging over up to 3 hours (from memory).
 */
public final class IntermittentFan {
	private static final Range AIRFLOW = new Range("airflow", 1, 5000, "cfm");
	private static final Range SHARE = new Range("share of each 4 hours", 0, 100, "%");
	private static final NavigableMap<Double, Double> FACTORS = new TreeMap<>(
			Map.of(25.0, 4.0, 33.0, 3.0, 50.0, 2.0, 66.0, 1.5, 75.0, 1.3, 100.0, 1.0));

	private IntermittentFan() {
	}

	/**
	 * @param neededCfm air needed all the time, 1 to 5000 cfm
	 * @param fanCfm outdoor air the fan moves as installed, 1 to 5000 cfm
	 * @return minutes an hour it has to run, above 0 to 60; empty when the fan is too small and no running time can do
	 */
	public static OptionalDouble minutesPerHour(double neededCfm, double fanCfm) {
		AIRFLOW.check(neededCfm);
		AIRFLOW.check(fanCfm);
		return fanCfm < neededCfm ? OptionalDouble.empty() : OptionalDouble.of(60 * neededCfm / fanCfm);
	}

	/**
	 * The factor by which the residential code multiplies the airflow of a fan that runs part of every 4 hours:
	 * International Residential Code table M1505.4.3(2), formerly M1507.3.3(2) (values from memory, rounded there: 75 %
	 * gives 1.3). Between its columns the shorter running time counts.
	 *
	 * @param percentOfFourHours 0 to 100 %
	 * @return the factor, 1 to 4; empty below 25 %, which the code does not allow
	 */
	public static OptionalDouble residentialCodeFactor(double percentOfFourHours) {
		Map.Entry<Double, Double> column = FACTORS.floorEntry(SHARE.check(percentOfFourHours));
		return column == null ? OptionalDouble.empty() : OptionalDouble.of(column.getValue());
	}
}
