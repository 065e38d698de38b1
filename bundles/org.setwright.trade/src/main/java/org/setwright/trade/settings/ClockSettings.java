package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.HEATING;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.degrees;
import static org.setwright.trade.settings.Group.fahrenheit;
import static org.setwright.trade.settings.Group.yesNo;

import java.util.List;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.house.Wishes;

/** Clock, schedule and set points. */
final class ClockSettings {
	private static final Group CLOCK = new Group("clock and schedule");
	private static final String SCHEDULED = "Wishes( schedule != NO_SCHEDULE )";

	private ClockSettings() {
	}

	static List<Setting> all() {
		return List.of(
				CLOCK.setting("TEMPERATURE_UNIT", "temperature unit", "In which unit temperatures are shown.",
						choice(Wishes.TemperatureUnit.class), Setting.ALWAYS),
				CLOCK.setting("CLOCK_FORMAT", "clock format", "How the clock is shown.",
						choice(Wishes.ClockFormat.class), Setting.ALWAYS),
				CLOCK.setting("DAYLIGHT_SAVING", "daylight saving",
						"Whether the clock changes by itself in spring and autumn.", yesNo(), Setting.ALWAYS),
				CLOCK.setting("SCHEDULE", "schedule", "Which days share a programme.",
						choice(Wishes.Schedule.class), Setting.ALWAYS),
				CLOCK.setting("HEAT_SET_POINT", "heating set point", "Heating set point while people are up and at home.",
						fahrenheit(45, 90), HEATING),
				CLOCK.setting("HEAT_SETBACK", "heating setback",
						"How far the heating set point drops while people sleep or are out.",
						degrees(0, 20), SCHEDULED + " " + HEATING),
				CLOCK.setting("COOL_SET_POINT", "cooling set point", "Cooling set point while people are at home.",
						fahrenheit(60, 95), "OutdoorUnit( )"),
				CLOCK.setting("COOL_SETBACK", "cooling setback",
						"How far the cooling set point rises while people are out.",
						degrees(0, 20), SCHEDULED + " OutdoorUnit( )"),
				CLOCK.setting("EARLY_START", "early start",
						"Whether the controller starts ahead of the programme to be at the set point in time.",
						yesNo(), SCHEDULED),
				CLOCK.setting("HOLIDAY_HEAT", "holiday heating set point",
						"Heating set point while the house is empty for days in winter.",
						fahrenheit(40, 70), "Wishes( awayInWinter == YES ) " + HEATING));
	}
}
