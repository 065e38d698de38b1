package org.setwright.trade.calculation.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTest {
	private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");

	@ParameterizedTest(name = "{0} {1}: {2} and {3}")
	@CsvSource({
			"America/New_York, 2006, 2006-04-02T07:00:00Z, 2006-10-29T06:00:00Z",
			"America/New_York, 2007, 2007-03-11T07:00:00Z, 2007-11-04T06:00:00Z",
			"America/New_York, 2024, 2024-03-10T07:00:00Z, 2024-11-03T06:00:00Z",
			"America/New_York, 2025, 2025-03-09T07:00:00Z, 2025-11-02T06:00:00Z",
			"America/New_York, 2026, 2026-03-08T07:00:00Z, 2026-11-01T06:00:00Z",
			"America/New_York, 2027, 2027-03-14T07:00:00Z, 2027-11-07T06:00:00Z",
			"America/Chicago, 2026, 2026-03-08T08:00:00Z, 2026-11-01T07:00:00Z",
			"America/Denver, 2026, 2026-03-08T09:00:00Z, 2026-11-01T08:00:00Z",
			"America/Los_Angeles, 2026, 2026-03-08T10:00:00Z, 2026-11-01T09:00:00Z",
			"America/Anchorage, 2026, 2026-03-08T11:00:00Z, 2026-11-01T10:00:00Z" })
	void clocksChangeOnTheLawfulDays(ZoneId zone, int year, Instant spring, Instant autumn) {
		var changes = DaylightSaving.changes(zone, year);
		assertEquals(2, changes.size(), "dates by 15 U.S.C. 260a, seen; instants from the time-zone database");
		assertEquals(spring, changes.get(0).getInstant());
		assertEquals(autumn, changes.get(1).getInstant());
		assertTrue(changes.get(0).isGap());
		assertEquals(2, changes.get(0).getDateTimeBefore().getHour(), "02:00 local");
		assertEquals(2, changes.get(1).getDateTimeBefore().getHour(), "02:00 local");
	}

	@Test
	void since2007TheStatuteAndTheRulesAgreeOnEveryYear() {
		for (int year = 2007; year <= 2100; year++) {
			var changes = DaylightSaving.changes(NEW_YORK, year);
			LocalDate march = LocalDate.of(year, Month.MARCH, 1).with(TemporalAdjusters.dayOfWeekInMonth(2, DayOfWeek.SUNDAY));
			LocalDate november = LocalDate.of(year, Month.NOVEMBER, 1).with(TemporalAdjusters.firstInMonth(DayOfWeek.SUNDAY));
			assertEquals(march, changes.get(0).getDateTimeBefore().toLocalDate());
			assertEquals(november, changes.get(1).getDateTimeBefore().toLocalDate());
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "America/Phoenix", "Pacific/Honolulu" })
	void arizonaAndHawaiiDoNotChange(String zone) {
		assertFalse(DaylightSaving.observed(ZoneId.of(zone), 2026), "statute exceptions, seen");
	}

	@ParameterizedTest(name = "{0}: {1} times")
	@CsvSource({ "2026-03-08T02:30, 0", "2026-03-08T03:00, 1", "2026-11-01T01:30, 2", "2026-11-01T02:00, 1", "2026-07-01T01:30, 1" })
	void aScheduleEventCanBeSkippedOrRunTwice(LocalDateTime wallTime, int times) {
		assertEquals(times, DaylightSaving.occurrences(NEW_YORK, wallTime));
	}

	@ParameterizedTest(name = "{0} has {1} hours")
	@CsvSource({ "2026-03-08, 23", "2026-11-01, 25", "2026-07-01, 24" })
	void daysOfAChangeAreShorterOrLonger(LocalDate day, long hours) {
		assertEquals(hours, Duration.between(day.atStartOfDay(NEW_YORK), day.plusDays(1).atStartOfDay(NEW_YORK)).toHours());
	}

	@ParameterizedTest(name = "{0} without power, reserve {1}, network {2}: {3}")
	@CsvSource({
			"PT2H, PT8H, false, CLOCK_KEPT", "PT8H, PT8H, false, CLOCK_KEPT", "PT8H1S, PT8H, false, CLOCK_TO_BE_SET",
			"PT1S, PT0S, false, CLOCK_TO_BE_SET", "PT48H, PT8H, true, CLOCK_FETCHED", "PT0S, PT0S, false, CLOCK_KEPT" })
	void aPowerCutLongerThanTheReserveStopsTheClock(Duration cut, Duration reserve, boolean network, PowerCut outcome) {
		assertEquals(outcome, PowerCut.after(cut, reserve, network), "common practice");
	}

	@Test
	void negativeDurationsAreRefused() {
		assertThrows(IllegalArgumentException.class, () -> PowerCut.after(Duration.ofHours(-1), Duration.ZERO, false));
	}
}
