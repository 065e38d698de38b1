package org.setwright.trade.calculation.heatpump;

import java.util.List;
import org.setwright.trade.calculation.Range;

/**
 * The design heating requirement that 10 CFR 430 subpart B appendix M rates a heat pump for.
 * <p>
 * Source: appendix M, section 4.2, as read in an open simulation program's source.
 */
public final class DesignRequirement {
	/** The standard requirements, in Btu/h, smallest first. */
	public static final List<Integer> STANDARD_BTU_PER_HOUR = List.of(5_000, 10_000, 15_000, 20_000, 25_000, 30_000, 35_000,
			40_000, 50_000, 60_000, 70_000, 80_000, 90_000, 100_000, 110_000, 130_000);

	private static final Range CAPACITY = new Range("heating capacity at 47 °F", 500, 1_000_000, "Btu/h");

	private DesignRequirement() {
	}

	/**
	 * @param btuPerHourAt47F rated heating capacity, 500 to 1,000,000 Btu/h
	 * @return the smallest requirement it is rated for in {@code region}, in Btu/h, before rounding to a standard one
	 */
	public static double minimumBtuPerHour(ClimateRegion region, double btuPerHourAt47F) {
		CAPACITY.check(btuPerHourAt47F);
		return region == ClimateRegion.V ? btuPerHourAt47F : btuPerHourAt47F * (65 - region.designFahrenheit()) / 60;
	}

	/** @return the standard requirement nearest to {@code btuPerHour}; of two equally near ones the smaller */
	public static int nearestStandardBtuPerHour(double btuPerHour) {
		int nearest = STANDARD_BTU_PER_HOUR.get(0);
		for (int standard : STANDARD_BTU_PER_HOUR) {
			if (Math.abs(standard - btuPerHour) < Math.abs(nearest - btuPerHour)) {
				nearest = standard;
			}
		}
		return nearest;
	}
}
