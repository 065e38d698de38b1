package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.DUCTED;
import static org.setwright.trade.settings.Group.HEATING;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.minutes;
import static org.setwright.trade.settings.Group.seconds;

import java.util.List;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.house.Wishes;

/** When the indoor fan runs. */
final class FanSettings {
	private static final Group FAN = new Group("fan");

	private FanSettings() {
	}

	static List<Setting> all() {
		return List.of(
				FAN.setting("FAN_IN_HEAT", "fan in heat",
						"Who starts the indoor fan on a call for heat that is not the compressor's.",
						choice(IndoorUnit.FanRunBy.class), "( IndoorUnit( fuel != NO_FUEL ) or AuxiliaryHeat( kind == ELECTRIC_ELEMENTS ) )"),
				FAN.setting("FAN_AFTER_HEAT", "fan after heating",
						"How long the controller keeps the fan running when a call for heat has ended.",
						seconds(0, 180), DUCTED + " " + HEATING),
				FAN.setting("FAN_AFTER_COOLING", "fan after cooling",
						"How long the controller keeps the fan running when a call for cooling has ended.",
						seconds(0, 180), "OutdoorUnit( ) " + DUCTED),
				FAN.setting("FAN_BETWEEN_CALLS", "fan between calls",
						"What the indoor fan does while nothing heats or cools.",
						choice(Wishes.FanBetweenCalls.class), DUCTED),
				FAN.setting("CIRCULATION_MINUTES", "circulation minutes",
						"How many minutes of each hour the fan runs to even out the rooms.",
						minutes(0, 60), DUCTED + " Wishes( fanBetweenCalls == PART_OF_EACH_HOUR )"));
	}
}
