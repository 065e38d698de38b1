package org.setwright.trade.calculation.ventilation;

/**
 * Exhaust at the room where moisture and smells arise. Source: International Mechanical Code section 403, read in a
 * commentary.
 */
public enum LocalExhaust {
	KITCHEN(100, 25), BATHROOM(50, 20);

	private final int intermittentCfm;
	private final int continuousCfm;

	LocalExhaust(int intermittentCfm, int continuousCfm) {
		this.intermittentCfm = intermittentCfm;
		this.continuousCfm = continuousCfm;
	}

	/** @return airflow of a fan switched on when needed, in cfm */
	public int intermittentCfm() {
		return intermittentCfm;
	}

	/** @return airflow of a fan that always runs, in cfm */
	public int continuousCfm() {
		return continuousCfm;
	}
}
