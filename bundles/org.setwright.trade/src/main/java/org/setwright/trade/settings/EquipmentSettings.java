package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.HEATING;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.degrees;
import static org.setwright.trade.settings.Group.yesNo;

import java.util.List;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;

/** What the controller is told about the equipment. */
final class EquipmentSettings {
	private static final Group EQUIPMENT = new Group("equipment");

	private EquipmentSettings() {
	}

	static List<Setting> all() {
		return List.of(
				EQUIPMENT.setting("SYSTEM_TYPE", "system type",
						"How heating and cooling are called for: by outputs of their own, or by one compressor and a changeover valve.",
						choice(SystemType.class), Setting.ALWAYS),
				EQUIPMENT.setting("HEAT_STAGES", "heating stages",
						"How many steps of heating the controller calls for, auxiliary heat not counted.",
						new Domain.Whole(0, 3), Setting.ALWAYS),
				EQUIPMENT.setting("COOL_STAGES", "cooling stages",
						"How many steps of cooling the controller calls for.",
						new Domain.Whole(0, 2), Setting.ALWAYS),
				EQUIPMENT.setting("STAGE_DIFFERENCE", "second-stage difference",
						"How far the room has to be from the set point before the second step joins in.",
						degrees(0.5, 5), "( OutdoorUnit( stages == 2 ) or IndoorUnit( stages >= 2, fuel != NO_FUEL ) )"),
				EQUIPMENT.setting("AUTOMATIC_CHANGEOVER", "automatic changeover",
						"Whether the controller changes between heating and cooling by itself.",
						yesNo(), "OutdoorUnit( ) " + HEATING),
				EQUIPMENT.setting("HEAT_COOL_GAP", "heat-cool gap",
						"The least distance the controller keeps between the heating and the cooling set point.",
						degrees(2, 10), "OutdoorUnit( ) " + HEATING));
	}

	/** How heating and cooling are called for. */
	enum SystemType implements Choice {
		@Called(label = "separate heating and cooling", meaning = "Heating and cooling have outputs of their own.")
		SEPARATE_HEATING_AND_COOLING,
		@Called(label = "heat pump", meaning = "The compressor heats and cools, with or without electric or hot-water auxiliary heat.")
		HEAT_PUMP,
		@Called(label = "dual fuel", meaning = "A heat pump and a fuel-fired furnace take turns.")
		DUAL_FUEL,
		@Called(label = "heating only", meaning = "Nothing cools.")
		HEATING_ONLY,
		@Called(label = "cooling only", meaning = "Nothing heats.")
		COOLING_ONLY
	}
}
