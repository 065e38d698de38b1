package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.DUCTED;
import static org.setwright.trade.settings.Group.HEATING;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.fahrenheit;

import java.util.List;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** What keeps people, pipes, floors and compressors from harm. */
final class LimitSettings {
	private static final Group LIMITS = new Group("limits and protection");

	private LimitSettings() {
	}

	static List<Setting> all() {
		return List.of(
				LIMITS.setting("LOWEST_HEAT", "lowest heating set point",
						"The lowest heating set point anybody can choose.",
						fahrenheit(35, 70), HEATING),
				LIMITS.setting("HIGHEST_HEAT", "highest heating set point",
						"The highest heating set point anybody can choose.",
						fahrenheit(60, 90), HEATING),
				LIMITS.setting("LOWEST_COOL", "lowest cooling set point",
						"The lowest cooling set point anybody can choose.",
						fahrenheit(60, 80), "OutdoorUnit( )"),
				LIMITS.setting("FLOOR_LIMIT", "floor temperature limit",
						"The floor temperature at which the heat stops, whatever the room wants.",
						fahrenheit(70, 105), "FloorSensor( )"),
				LIMITS.setting("COOLING_LOCKOUT", "cooling lockout",
						"Outdoor temperature below which cooling is held off.",
						fahrenheit(30, 70), "OutdoorUnit( kind != GROUND_SOURCE_HEAT_PUMP ) OutdoorSensor( ) Controller( outdoorLockouts == YES )"),
				LIMITS.setting("WARM_WEATHER_STOP", "warm-weather stop",
						"Outdoor temperature above which a boiler is held off.",
						fahrenheit(45, 75), "IndoorUnit( kind == BOILER ) OutdoorSensor( ) Controller( outdoorLockouts == YES )"),
				LIMITS.setting("COLD_ROOM_ALERT", "cold-room alert",
						"Room temperature at which the controller warns that the house may freeze.",
						fahrenheit(35, 60), "Building( pipesInColdSpaces == YES ) " + HEATING),
				LIMITS.setting("SCREEN_LOCK", "screen lock",
						"What somebody without the code can change.",
						choice(Lock.class), "Wishes( limitedAccess == YES )"),
				LIMITS.setting("FILTER_REMINDER", "filter reminder",
						"After how many days the controller asks for a new or a clean filter.",
						new Domain.Measure(Unit.DAY, 14, 730), DUCTED));
	}

	/** What is locked. */
	enum Lock implements Choice {
		@Called(label = "open", meaning = "Everything can be changed.")
		OPEN,
		@Called(label = "set points only", meaning = "Set points can be changed within their limits, nothing else.")
		SET_POINTS_ONLY,
		@Called(label = "all locked", meaning = "Nothing can be changed without the code.")
		ALL_LOCKED
	}
}
