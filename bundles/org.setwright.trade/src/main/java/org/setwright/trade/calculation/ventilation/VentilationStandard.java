package org.setwright.trade.calculation.ventilation;

import org.setwright.trade.calculation.Range;

/**
 * The rules for whole-dwelling ventilation in use. They differ by nearly two to one, and which one applies is a matter of
 * law, not of arithmetic: somebody has to say which the authority having jurisdiction has adopted.
 */
public enum VentilationStandard {
	/**
	 * ASHRAE 62.2-2013 and later, equation: 0.03 cfm per square foot and 7.5 cfm per bedroom and one more (read in a model
	 * mechanical code, section E 605.1.3).
	 */
	ASHRAE_62_2_EQUATION(0.03),
	/**
	 * The same standard's table 4.1a (read in the same place and in a ventilation guide): the equation at the top of each
	 * 500 square foot band, rounded. Up to 5000 square feet and 5 bedrooms.
	 */
	ASHRAE_62_2_TABLE(0.03) {
		@Override
		public double cfm(double squareFeet, int bedrooms) {
			if (squareFeet > TABLE_ENDS || bedrooms > TABLE_BEDROOMS) {
				throw new IllegalArgumentException("the table ends at 5000 ft2 and 5 bedrooms; use the equation for "
						+ squareFeet + " ft2 and " + bedrooms + " bedrooms");
			}
			double bandTop = Math.max(1, Math.ceil(AREA.check(squareFeet) / BAND)) * BAND;
			return Math.floor(super.cfm(bandTop, bedrooms) + 0.5);
		}
	},
	/**
	 * International Residential Code and International Mechanical Code (equation 4-9), and ASHRAE 62.2 up to 2010: 0.01
	 * cfm per square foot and 7.5 cfm per bedroom and one more (read in a commentary on IMC section 403).
	 */
	RESIDENTIAL_CODE(0.01);

	private static final Range AREA = new Range("floor area", 100, 50_000, "ft2");
	private static final Range BEDROOMS = new Range("number of bedrooms", 0, 30, "");
	private static final double PER_PERSON = 7.5;
	private static final double BAND = 500;
	private static final double TABLE_ENDS = 5000;
	private static final int TABLE_BEDROOMS = 5;

	private final double perSquareFoot;

	VentilationStandard(double perSquareFoot) {
		this.perSquareFoot = perSquareFoot;
	}

	/**
	 * @param squareFeet floor area, 100 to 50,000 ft2
	 * @param bedrooms 0 to 30; none counts as one
	 * @return outdoor air needed all the time, in cfm
	 */
	public double cfm(double squareFeet, int bedrooms) {
		BEDROOMS.check(bedrooms);
		return perSquareFoot * AREA.check(squareFeet) + PER_PERSON * (Math.max(1, bedrooms) + 1);
	}

	/**
	 * ASHRAE 62.2 in its own metric form, which is not quite the converted one (from memory): 0.15 L/s per square metre
	 * and 3.5 L/s per bedroom and one more.
	 *
	 * @param squareMetres 10 to 5000 m²
	 * @param bedrooms 0 to 30; none counts as one
	 * @return outdoor air needed all the time, in L/s
	 */
	public static double ashraeLitresPerSecond(double squareMetres, int bedrooms) {
		BEDROOMS.check(bedrooms);
		return 0.15 * new Range("floor area", 10, 5000, "m2").check(squareMetres) + 3.5 * (Math.max(1, bedrooms) + 1);
	}
}
