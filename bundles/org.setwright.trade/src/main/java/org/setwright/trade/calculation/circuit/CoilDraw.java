package org.setwright.trade.calculation.circuit;

/**
 * What the coils of a 24 V control circuit usually draw while they hold. Source: a parts dealer's training module (read),
 * which gives indicative ranges; the coil's own label goes first.
 */
public enum CoilDraw {
	/** The contactor that starts a compressor. */
	CONTACTOR(0.3, 0.5),
	/** A gas valve; a changeover valve and a zone valve are taken alike (common practice). */
	VALVE(0.1, 0.3),
	/** A relay: fan, electric elements, burner control. */
	RELAY(0.05, 0.1);

	private final double least;
	private final double most;

	CoilDraw(double leastAmperes, double mostAmperes) {
		least = leastAmperes;
		most = mostAmperes;
	}

	/** @return lower end of the usual range, in A */
	public double leastAmperes() {
		return least;
	}

	/** @return upper end of the usual range, in A */
	public double mostAmperes() {
		return most;
	}

	/** @return upper end of the usual range at 24 V, in VA */
	public double mostVoltAmperes() {
		return most * ControlTransformer.USUAL_VOLTS;
	}
}
