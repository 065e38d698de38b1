package org.setwright.trade.calculation.dualfuel;

/**
 * Fuels as they are sold, with their heat content (higher heating value).
 * <p>
 * Source: U.S. Energy Information Administration, "Units and calculators explained: British thermal units" (read; the
 * page's averages change a little by year). The supplier's bill or delivery note goes first: pass its figure to
 * {@link DeliveredHeat} instead.
 */
public enum FuelUnit {
	/** 100,000 Btu by definition. */
	THERM_OF_NATURAL_GAS("therm", 100_000),
	/** 100 cubic feet; 1,036 to 1,039 Btu per cubic foot by year, the middle taken. */
	HUNDRED_CUBIC_FEET_OF_NATURAL_GAS("100 ft3", 103_750),
	/** One U.S. gallon of liquid propane. */
	GALLON_OF_PROPANE("gallon", 91_452),
	/** One U.S. gallon of heating oil. */
	GALLON_OF_HEATING_OIL("gallon", 138_500);

	private final String label;
	private final double btu;

	FuelUnit(String label, double btu) {
		this.label = label;
		this.btu = btu;
	}

	/** @return the unit on the bill */
	public String label() {
		return label;
	}

	/** @return heat content, in Btu per unit sold */
	public double btu() {
		return btu;
	}
}
