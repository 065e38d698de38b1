package org.setwright.trade.calculation.airflow;

import org.setwright.trade.calculation.Range;

/**
 * Heat carried by moving air, by the trade's factors for standard air (70 °F, 14.7 psi, 0.075 lb/ft3):
 * {@code sensible heat = 1.08 * cfm * difference}, {@code total heat = 4.5 * cfm * enthalpy difference}, both smaller in
 * thin air. Sources: the factors read in trade discussions; 0.075 * 0.24 * 60 = 1.08 and 0.075 * 60 = 4.5 exactly. ASHRAE
 * uses up to 1.10 for moist air.
 */
public final class Airflow {
	/** Usual airflow per ton of cooling, in cfm; common practice: about 350 for more drying, up to 450 in dry climates. */
	public static final double USUAL_CFM_PER_TON = 400;

	private static final Range CFM = new Range("airflow", 1, 20_000, "cfm");
	private static final Range PER_TON = new Range("airflow per ton", 200, 600, "cfm");
	private static final Range TONS = new Range("cooling capacity", 0.25, 50, "tons");
	private static final Range DIFFERENCE = new Range("temperature difference", -200, 200, "F°");
	private static final Range ENTHALPY = new Range("enthalpy difference", -100, 100, "Btu/lb");
	private static final Range HEAT = new Range("heat", 0, 2_000_000, "Btu/h");
	private static final double SENSIBLE = 1.08;
	private static final double TOTAL = 4.5;

	private Airflow() {
	}

	/** @param tons 0.25 to 50 tons @param cfmPerTon 200 to 600 cfm @return airflow for that cooling capacity, in cfm */
	public static double cfm(double tons, double cfmPerTon) {
		return TONS.check(tons) * PER_TON.check(cfmPerTon);
	}

	/**
	 * @param cfm 1 to 20,000 cfm
	 * @param differenceFahrenheit supply less return, -200 to 200 F°; below 0 when cooling
	 * @param altitudeFeet -1500 to 20,000 ft
	 * @return heat added to the air, in Btu/h
	 */
	public static double sensibleBtuPerHour(double cfm, double differenceFahrenheit, double altitudeFeet) {
		return SENSIBLE * StandardAtmosphere.densityFactor(altitudeFeet) * CFM.check(cfm)
				* DIFFERENCE.check(differenceFahrenheit);
	}

	/** @return how much warmer {@code btuPerHour} (0 to 2,000,000) makes the air, in F°; other ranges as above */
	public static double riseFahrenheit(double btuPerHour, double cfm, double altitudeFeet) {
		return HEAT.check(btuPerHour) / (SENSIBLE * StandardAtmosphere.densityFactor(altitudeFeet) * CFM.check(cfm));
	}

	/** @return airflow at which {@code btuPerHour} (0 to 2,000,000) warms the air by {@code riseFahrenheit}, 1 to 200 F° */
	public static double cfmForRise(double btuPerHour, double riseFahrenheit, double altitudeFeet) {
		new Range("temperature rise", 1, 200, "F°").check(riseFahrenheit);
		return HEAT.check(btuPerHour) / (SENSIBLE * StandardAtmosphere.densityFactor(altitudeFeet) * riseFahrenheit);
	}

	/** @param enthalpyBtuPerPound -100 to 100 Btu/lb @return heat added, moisture counted, at sea level, in Btu/h */
	public static double totalBtuPerHour(double cfm, double enthalpyBtuPerPound) {
		return TOTAL * CFM.check(cfm) * ENTHALPY.check(enthalpyBtuPerPound);
	}
}
