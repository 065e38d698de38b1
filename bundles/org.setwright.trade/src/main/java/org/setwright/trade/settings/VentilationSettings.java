package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.fahrenheit;
import static org.setwright.trade.settings.Group.minutes;
import static org.setwright.trade.settings.Group.yesNo;

import java.util.List;
import org.setwright.trade.accessories.ControlledBy;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.catalogue.Unit;

/** Fresh air. */
final class VentilationSettings {
	private static final Group AIR = new Group("ventilation");
	private static final String BY_CONTROLLER = "Ventilator( controlledBy == CONTROLLER )";

	private VentilationSettings() {
	}

	static List<Setting> all() {
		return List.of(
				AIR.setting("VENTILATOR_CONTROL", "ventilator control",
						"Who decides when the ventilator runs.",
						choice(ControlledBy.class), "Ventilator( )"),
				AIR.setting("VENTILATION_RATE", "ventilation rate",
						"How much outdoor air the house needs on average.",
						new Domain.Measure(Unit.CUBIC_FOOT_PER_MINUTE, 0, 1000), "Ventilator( )"),
				AIR.setting("VENTILATION_MINUTES", "ventilation minutes",
						"How many minutes of each hour the ventilator runs.",
						minutes(0, 60), BY_CONTROLLER),
				AIR.setting("FAN_WITH_VENTILATION", "fan with ventilation",
						"Whether the indoor fan runs whenever the ventilator does.",
						yesNo(), BY_CONTROLLER),
				AIR.setting("VENTILATION_COLD_STOP", "ventilation cold stop",
						"Outdoor temperature below which fresh air is held off.",
						fahrenheit(-40, 50), BY_CONTROLLER + " OutdoorSensor( )"));
	}
}
