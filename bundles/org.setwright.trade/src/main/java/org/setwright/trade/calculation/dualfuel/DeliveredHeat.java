package org.setwright.trade.calculation.dualfuel;

import org.setwright.trade.calculation.Range;

/**
 * What heat costs once it is in the house, so that different fuels compare. Prices are in any one currency.
 * <p>
 * Source: U.S. Energy Information Administration, "How do I compare the cost of heating fuels?" (read): price over heat
 * content, then over the appliance's efficiency.
 */
public final class DeliveredHeat {
	/** Heat of one kilowatt-hour: 3,600,000 J / 1055.05585262 J, in Btu. */
	public static final double BTU_PER_KILOWATT_HOUR = 3_600_000 / 1055.05585262;

	private static final Range PRICE = new Range("price", 0.0001, 10_000, "per unit");
	private static final Range HEAT_CONTENT = new Range("heat content", 100, 100_000_000, "Btu per unit");
	private static final Range EFFICIENCY = new Range("efficiency", 0.3, 1, "(share of 1)");
	static final Range COP = new Range("coefficient of performance", 0.5, 15, "");
	private static final double MILLION = 1e6;

	private DeliveredHeat() {
	}

	/**
	 * @param pricePerUnit price of one unit sold
	 * @param btuPerUnit its heat content, for example {@link FuelUnit#btu()}
	 * @param efficiency seasonal efficiency of the appliance (AFUE) as a share, 0.3 to 1
	 * @return price of a million Btu delivered
	 */
	public static double fuelPricePerMillionBtu(double pricePerUnit, double btuPerUnit, double efficiency) {
		return MILLION * PRICE.check(pricePerUnit) / (HEAT_CONTENT.check(btuPerUnit) * EFFICIENCY.check(efficiency));
	}

	/**
	 * @param pricePerKilowattHour price of a kilowatt-hour
	 * @param cop heat delivered over electricity taken: 1 for resistance heat, 0.5 to 15
	 * @return price of a million Btu delivered
	 */
	public static double electricPricePerMillionBtu(double pricePerKilowattHour, double cop) {
		return MILLION * PRICE.check(pricePerKilowattHour) / (BTU_PER_KILOWATT_HOUR * COP.check(cop));
	}

	/** @return the coefficient of performance above which the heat pump's heat is the cheaper; no unit */
	public static double breakEvenCop(double pricePerKilowattHour, double fuelPricePerUnit, double btuPerUnit,
			double efficiency) {
		return electricPricePerMillionBtu(pricePerKilowattHour, 1)
				/ fuelPricePerMillionBtu(fuelPricePerUnit, btuPerUnit, efficiency);
	}
}
