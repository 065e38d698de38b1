package org.setwright.trade.calculation.heatpump;

import org.setwright.trade.calculation.Range;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;

/**
 * The heat that has to come from elsewhere when the heat pump alone cannot keep up. Source: heat balance; electric heat
 * by the exact kilowatt-hour (3,600,000 J) and International Table Btu (1055.05585262 J).
 */
public final class Shortfall {
	private static final Range POWER = new Range("auxiliary heat", 0, 300, "kW");
	private static final Range STAGE = new Range("auxiliary heat stage", 0.01, 300, "kW");
	private static final double ROUNDING = 1e-9;

	private Shortfall() {
	}

	/** @return what is missing at {@code outdoorFahrenheit} (-80 to 140 °F), in Btu/h; 0 when the heat pump keeps up */
	public static double btuPerHour(HeatingCapacity capacity, LoadLine load, double outdoorFahrenheit) {
		return Math.max(0, load.at(outdoorFahrenheit) - capacity.at(outdoorFahrenheit));
	}

	/** @return the same as electric power, in kW */
	public static double kilowatts(HeatingCapacity capacity, LoadLine load, double outdoorFahrenheit) {
		return new Quantity(btuPerHour(capacity, load, outdoorFahrenheit), Unit.BTU_PER_HOUR).in(Unit.KILOWATT);
	}

	/**
	 * @param neededKilowatts 0 to 300 kW
	 * @param stageKilowatts size of one stage, 0.01 to 300 kW
	 * @return how many equal stages make at least that power
	 */
	public static int stages(double neededKilowatts, double stageKilowatts) {
		return (int) Math.ceil(POWER.check(neededKilowatts) / STAGE.check(stageKilowatts) - ROUNDING);
	}
}
