package org.setwright.trade.calculation.clock;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Year;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.stream.Stream;
import org.setwright.trade.calculation.Range;

/**
 * When clocks change in a zone, and what that does to a schedule.
 * <p>
 * Source: the Java platform's time-zone rules (tz database), which hold the law in force; in the United States 15 U.S.C.
 * 260a as amended by Public Law 109-58 section 110 (second Sunday of March to first Sunday of November since 2007).
 */
public final class DaylightSaving {
	private static final Range YEAR = new Range("year", 1900, 2200, "");

	private DaylightSaving() {
	}

	/** @param year 1900 to 2200 @return the changes of that year by local date, earliest first; empty when there are none */
	public static List<ZoneOffsetTransition> changes(ZoneId zone, int year) {
		YEAR.check(year);
		ZoneRules rules = zone.getRules();
		Instant start = Year.of(year).atDay(1).atStartOfDay(zone).toInstant().minusSeconds(1);
		return Stream.iterate(rules.nextTransition(start), t -> t != null, t -> rules.nextTransition(t.getInstant()))
				.takeWhile(t -> t.getDateTimeBefore().getYear() <= year).toList();
	}

	/** @return whether a controller in {@code zone} has to change its clock in {@code year} (1900 to 2200) */
	public static boolean observed(ZoneId zone, int year) {
		return !changes(zone, year).isEmpty();
	}

	/** @return whether clocks in {@code zone} go on changing every year by the rule in force last */
	public static boolean hasStandingRule(ZoneId zone) {
		return !zone.getRules().getTransitionRules().isEmpty();
	}

	/**
	 * @return how often the clock on the wall shows {@code wallTime}: once as a rule; never when it is skipped in spring;
	 *         twice when it comes again in autumn, so that a schedule event may run twice
	 */
	public static int occurrences(ZoneId zone, LocalDateTime wallTime) {
		return zone.getRules().getValidOffsets(wallTime).size();
	}
}
