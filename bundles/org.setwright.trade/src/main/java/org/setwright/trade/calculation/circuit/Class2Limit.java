package org.setwright.trade.calculation.circuit;

import org.setwright.trade.calculation.Range;

/**
 * How much an alternating-current source may deliver and still feed a Class 2 circuit, up to 30 V.
 * <p>
 * Source: NFPA 70 (National Electrical Code), article 725, chapter 9, table 11(A): the 100 VA limit and the 8 A of
 * inherently limited sources read in secondary copies, the other cells from memory. The edition adopted locally goes
 * first; since 2023 the rules stand partly elsewhere.
 */
public final class Class2Limit {
	/** Largest current of an inherently limited source (it cannot give more even into a short), in A. */
	public static final double INHERENT_AMPERES = 8.0;
	/** Largest apparent power of a source that is not inherently limited, into any load without its fuse, in VA. */
	public static final double UNLIMITED_VOLT_AMPERES = 250;

	private static final Range VOLTS = new Range("source voltage", 1, 30, "V");
	private static final double LOW_VOLTS = 20;

	private Class2Limit() {
	}

	/** @param volts 1 to 30 V @return largest nameplate rating, in VA */
	public static double nameplateVoltAmperes(double volts) {
		return VOLTS.check(volts) <= LOW_VOLTS ? 5 * volts : 100;
	}

	/** @param volts 1 to 30 V @return largest nameplate current, in A */
	public static double nameplateAmperes(double volts) {
		return nameplateVoltAmperes(volts) / volts;
	}

	/** @param volts 1 to 30 V @return largest current of a source that is not inherently limited, without its fuse, in A */
	public static double unlimitedAmperes(double volts) {
		return 1000 / VOLTS.check(volts);
	}

	/** @param volts 1 to 30 V @return largest fuse or breaker of a source that is not inherently limited, in A */
	public static double overcurrentAmperes(double volts) {
		return VOLTS.check(volts) <= LOW_VOLTS ? 5.0 : 100 / volts;
	}
}
