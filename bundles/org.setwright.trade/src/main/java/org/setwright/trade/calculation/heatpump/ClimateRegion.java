package org.setwright.trade.calculation.heatpump;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The six generalised climate regions in which United States heat pumps are rated for the heating season, with the
 * constants of the two rating procedures.
 * <p>
 * Source: 10 CFR 430 subpart B appendix M (constants and bin hours also in AHRI 210/240-2017) and appendix M1 (also in
 * AHRI 210/240-2023, section 11.2.2, table 14), read in an open simulation program's source; heating load hours from
 * memory.
 */
public enum ClimateRegion {
	I(37, 58, 1.10, 1.03, 750, 493, .291, .239, .194, .129, .081, .041, .019, .005, .001),
	II(27, 57, 1.06, 0.99, 1250, 857, .215, .189, .163, .143, .112, .088, .056, .024, .008, .002),
	III(17, 56, 1.30, 1.21, 1750, 1247, .153, .142, .138, .137, .135, .118, .092, .047, .021, .009, .005, .002, .001),
	IV(5, 55, 1.15, 1.07, 2250, 1701, .132, .111, .103, .093, .100, .109, .126, .087, .055, .036, .026, .013, .006, .002,
			.001),
	V(-10, 55, 1.16, 1.08, 2750, 2202, .106, .092, .086, .076, .078, .087, .102, .094, .074, .055, .047, .038, .029, .018,
			.010, .005, .002, .001),
	VI(30, 57, 1.11, 1.03, 2750, 1842, .113, .206, .215, .204, .141, .076, .034, .008, .003);

	private static final int WARMEST_BIN = 62;
	private static final int BIN_WIDTH = 5;

	/** The middles of the 5 °F temperature bins, warmest (62 °F) first, to -23 °F. */
	public static final List<Integer> BINS_FAHRENHEIT = IntStream.range(0, 18).map(i -> WARMEST_BIN - BIN_WIDTH * i).boxed()
			.toList();

	private final int designFahrenheit;
	private final int zeroLoadFahrenheit;
	private final double slope;
	private final double slopeVariableSpeed;
	private final int loadHours;
	private final int loadHoursM1;
	private final double[] fractions;

	ClimateRegion(int designFahrenheit, int zeroLoadFahrenheit, double slope, double slopeVariableSpeed, int loadHours,
			int loadHoursM1, double... fractions) {
		this.designFahrenheit = designFahrenheit;
		this.zeroLoadFahrenheit = zeroLoadFahrenheit;
		this.slope = slope;
		this.slopeVariableSpeed = slopeVariableSpeed;
		this.loadHours = loadHours;
		this.loadHoursM1 = loadHoursM1;
		this.fractions = fractions;
	}

	/** @return outdoor design temperature, in °F */
	public int designFahrenheit() {
		return designFahrenheit;
	}

	/** @return outdoor temperature at which a building needs no heat, in °F, by appendix M1 (appendix M: 65 °F) */
	public int zeroLoadFahrenheit() {
		return zeroLoadFahrenheit;
	}

	/** @return appendix M1's ratio of heating load at 5 °F to cooling capacity at 95 °F; no unit */
	public double slopeFactor(boolean variableSpeed) {
		return variableSpeed ? slopeVariableSpeed : slope;
	}

	/** @return heating load hours a year by appendix M */
	public int heatingLoadHours() {
		return loadHours;
	}

	/** @return heating load hours a year by appendix M1 */
	public int heatingLoadHoursM1() {
		return loadHoursM1;
	}

	/**
	 * @param bin middle of the bin in °F, one of {@link #BINS_FAHRENHEIT}
	 * @return share of the heating season spent in the bin by appendix M, from 0 to 1; all bins add up to 1
	 */
	public double fractionOfSeason(int bin) {
		int index = BINS_FAHRENHEIT.indexOf(bin);
		if (index < 0) {
			throw new IllegalArgumentException("temperature bins are " + BINS_FAHRENHEIT + " °F, not " + bin + " °F");
		}
		return index < fractions.length ? fractions[index] : 0;
	}

	/**
	 * @param bin middle of the bin in °F, one of {@link #BINS_FAHRENHEIT}
	 * @return the share of appendix M1: as {@link #fractionOfSeason}, but 0 where the building needs no heat, so that all
	 *         bins add up to less than 1
	 */
	public double fractionOfSeasonM1(int bin) {
		double fraction = fractionOfSeason(bin);
		return bin >= zeroLoadFahrenheit ? 0 : fraction;
	}

	/** @return share of the heating season in bins whose middle is below {@code fahrenheit}, from 0 to 1 (appendix M) */
	public double fractionBelow(double fahrenheit) {
		return BINS_FAHRENHEIT.stream().filter(bin -> bin < fahrenheit).mapToDouble(this::fractionOfSeason).sum();
	}
}
