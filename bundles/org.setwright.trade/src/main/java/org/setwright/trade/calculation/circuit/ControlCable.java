package org.setwright.trade.calculation.circuit;

import org.setwright.trade.calculation.Range;

/**
 * The pair of conductors that carries one load of the control circuit, out and back: {@code drop = 2 L R I}.
 * Source: Ohm's law. A coil is taken to draw its stated volt-amperes at the nominal voltage, which overstates the drop a
 * little: the safe side.
 *
 * @param wire one conductor
 * @param oneWayFeet length of the cable, 0 to 2000 ft
 * @param celsius temperature of the wire, -50 to 150 °C
 */
public record ControlCable(CopperWire wire, double oneWayFeet, double celsius) {
	private static final Range LENGTH = new Range("cable length", 0, 2000, "ft");
	private static final Range CURRENT = new Range("current", 0, 20, "A");
	private static final Range DROP = new Range("voltage drop allowed", 0, 30, "V");
	private static final Range LOAD = new Range("coil load", 0, 400, "VA");
	private static final Range SOURCE = new Range("source voltage", 1, 30, "V");

	public ControlCable {
		LENGTH.check(oneWayFeet);
		wire.ohmsPerKilometre(celsius);
	}

	/** @param amperes 0 to 20 A @return voltage lost in both conductors, in V */
	public double dropVolts(double amperes) {
		return loopOhms() * CURRENT.check(amperes);
	}

	/** @return resistance out and back, in ohm */
	public double loopOhms() {
		return 2 * oneWayFeet / 1000 * wire.ohmsPerThousandFeet(celsius);
	}

	/**
	 * @param sourceVolts at the transformer, 1 to 30 V
	 * @param coilVoltAmperes holding or inrush figure of the coil at that voltage, 0 to 400 VA
	 * @return voltage left at the coil, in V; 0 when nothing is left. To be compared with the coil's pull-in voltage.
	 */
	public double voltsAtCoil(double sourceVolts, double coilVoltAmperes) {
		return Math.max(0, SOURCE.check(sourceVolts) - dropVolts(LOAD.check(coilVoltAmperes) / sourceVolts));
	}

	/**
	 * @param amperes above 0, to 20 A
	 * @param dropVolts drop to stay within, 0 to 30 V
	 * @param celsius temperature of the wire, -50 to 150 °C
	 * @return longest cable, one way, in ft
	 */
	public static double longestFeet(CopperWire wire, double amperes, double dropVolts, double celsius) {
		if (CURRENT.check(amperes) == 0) {
			throw new IllegalArgumentException("current must be above 0 A: without current any length will do");
		}
		return DROP.check(dropVolts) / (2 * amperes * wire.ohmsPerThousandFeet(celsius)) * 1000;
	}
}
