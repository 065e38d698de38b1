package org.setwright.trade.calculation.airflow;

import org.setwright.trade.calculation.Range;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/**
 * Electric heating elements: all their power becomes heat, 3412.142 Btu/h for each kilowatt (exact: 3,600,000 J /
 * 1055.05585262 J). They must never run without airflow.
 */
public final class ElectricHeat {
	private static final Range POWER = new Range("electric heat", 0, 300, "kW");
	private static final Range VOLTS = new Range("supply voltage", 100, 600, "V");

	private ElectricHeat() {
	}

	/** @param kilowatts 0 to 300 kW @return heat given, in Btu/h */
	public static double btuPerHour(double kilowatts) {
		return new Quantity(POWER.check(kilowatts), Unit.KILOWATT).in(Unit.BTU_PER_HOUR);
	}

	/**
	 * @param kilowatts 0 to 300 kW, rated at the voltage
	 * @param volts 100 to 600 V, single phase
	 * @return current the elements draw, in A: power over voltage, elements having a power factor of one
	 */
	public static double amperes(double kilowatts, double volts) {
		return POWER.check(kilowatts) * 1000 / VOLTS.check(volts);
	}

	/** @return how much the elements warm the air, in F°; ranges as {@link #btuPerHour} and {@link Airflow#riseFahrenheit} */
	public static double riseFahrenheit(double kilowatts, double cfm, double altitudeFeet) {
		return Airflow.riseFahrenheit(btuPerHour(kilowatts), cfm, altitudeFeet);
	}
}
