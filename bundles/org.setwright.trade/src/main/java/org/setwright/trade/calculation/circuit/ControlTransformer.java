package org.setwright.trade.calculation.circuit;

import org.setwright.trade.calculation.Range;

/**
 * A control transformer and what hangs on it. Loads that can be on together add up in volt-amperes and must not exceed
 * the nameplate (trade rule, read in a secondary copy; common practice).
 *
 * @param nameplateVoltAmperes 1 to 1000 VA
 * @param secondaryVolts nominal, 1 to 30 V
 */
public record ControlTransformer(double nameplateVoltAmperes, double secondaryVolts) {
	/** The voltage control circuits are named after, in V. */
	public static final double USUAL_VOLTS = 24;

	private static final Range RATING = new Range("transformer rating", 1, 1000, "VA");
	private static final Range VOLTS = new Range("secondary voltage", 1, 30, "V");
	private static final Range PRIMARY = new Range("primary voltage", 100, 600, "V");
	private static final Range LOAD = new Range("load", 0, 10_000, "VA");

	public ControlTransformer {
		RATING.check(nameplateVoltAmperes);
		VOLTS.check(secondaryVolts);
	}

	/** @return a transformer of 24 V and {@code nameplateVoltAmperes} (1 to 1000 VA) */
	public static ControlTransformer of24Volts(double nameplateVoltAmperes) {
		return new ControlTransformer(nameplateVoltAmperes, USUAL_VOLTS);
	}

	/** @return current at full nameplate load on the 24 V side, in A */
	public double secondaryAmperes() {
		return nameplateVoltAmperes / secondaryVolts;
	}

	/** @param primaryVolts 100 to 600 V @return current at full nameplate load on the line side, losses left out, in A */
	public double primaryAmperes(double primaryVolts) {
		return nameplateVoltAmperes / PRIMARY.check(primaryVolts);
	}

	/**
	 * @param loadVoltAmperes everything that can be on together, 0 to 10,000 VA
	 * @return what is left, in VA; below 0 when it is overloaded
	 */
	public double spareVoltAmperes(double loadVoltAmperes) {
		return nameplateVoltAmperes - LOAD.check(loadVoltAmperes);
	}

	/** @return whether its nameplate keeps within {@link Class2Limit} */
	public boolean keepsClass2() {
		return nameplateVoltAmperes <= Class2Limit.nameplateVoltAmperes(secondaryVolts);
	}
}
