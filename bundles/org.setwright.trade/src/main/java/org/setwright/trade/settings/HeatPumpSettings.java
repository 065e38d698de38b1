package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.HEAT_PUMP;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.degrees;
import static org.setwright.trade.settings.Group.fahrenheit;
import static org.setwright.trade.settings.Group.minutes;

import java.util.List;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.equipment.AuxiliaryHeat;

/** What only a heat pump needs. */
final class HeatPumpSettings {
	private static final Group PUMP = new Group("heat pump");
	private static final String WITH_AUXILIARY = HEAT_PUMP + " AuxiliaryHeat( )";
	private static final String KNOWS_OUTDOORS = " OutdoorSensor( ) Controller( outdoorLockouts == YES )";

	private HeatPumpSettings() {
	}

	static List<Setting> all() {
		return List.of(
				PUMP.setting("CHANGEOVER_VALVE", "changeover valve",
						"In which mode the controller powers the heat pump's changeover valve; the wrong one heats on a call for cooling.",
						choice(ChangeoverValve.class), HEAT_PUMP),
				PUMP.setting("AUXILIARY_STAGES", "auxiliary heat stages",
						"How many steps of auxiliary heat the controller calls for after the compressor.",
						new Domain.Whole(0, 2), HEAT_PUMP),
				PUMP.setting("AUXILIARY_SOURCE", "auxiliary heat source",
						"What makes the auxiliary heat, which decides who runs the fan and whether the compressor may run with it.",
						choice(AuxiliaryHeat.Kind.class), WITH_AUXILIARY),
				PUMP.setting("COMPRESSOR_WITH_AUXILIARY", "compressor with auxiliary heat",
						"Whether the compressor goes on running while auxiliary heat is on.",
						choice(Together.class), WITH_AUXILIARY),
				PUMP.setting("AUXILIARY_DIFFERENCE", "auxiliary heat difference",
						"How far the room has to fall below the set point before auxiliary heat joins in.",
						degrees(1, 6), WITH_AUXILIARY),
				PUMP.setting("AUXILIARY_DELAY", "auxiliary heat delay",
						"How long the compressor heats alone before auxiliary heat may join in.",
						minutes(0, 120), Setting.OPTIONAL),
				PUMP.setting("AUXILIARY_LOCKOUT", "auxiliary heat lockout",
						"Outdoor temperature above which electric or hot-water auxiliary heat is held off.",
						fahrenheit(0, 70), HEAT_PUMP + " AuxiliaryHeat( kind != FURNACE )" + KNOWS_OUTDOORS),
				PUMP.setting("COMPRESSOR_LOCKOUT", "compressor lockout",
						"Outdoor temperature below which the compressor is held off and auxiliary heat works alone.",
						fahrenheit(-40, 60), Setting.OPTIONAL),
				PUMP.setting("FUEL_SWITCH_OVER", "fuel switch-over",
						"Outdoor temperature at which a dual-fuel system changes from compressor to furnace.",
						fahrenheit(-20, 60),
						"OutdoorUnit( kind == AIR_SOURCE_HEAT_PUMP ) AuxiliaryHeat( kind == FURNACE )" + KNOWS_OUTDOORS),
				PUMP.setting("EMERGENCY_HEAT", "emergency heat",
						"Whether the occupants can choose to heat without the compressor when it has failed.",
						choice(Offered.class), HEAT_PUMP),
				PUMP.setting("EMERGENCY_OUTPUT", "emergency heat output",
						"Which output is powered in emergency heat.",
						choice(EmergencyOutput.class), WITH_AUXILIARY));
	}

	/** Whether two things run at the same time. */
	enum Together implements Choice {
		@Called(label = "together", meaning = "The compressor goes on while auxiliary heat helps.")
		TOGETHER,
		@Called(label = "never together", meaning = "The compressor stops before auxiliary heat starts.")
		NEVER_TOGETHER
	}

	/** Whether a mode is offered. */
	enum Offered implements Choice {
		@Called(label = "offered", meaning = "The occupants can choose it.")
		OFFERED,
		@Called(label = "not offered", meaning = "It is hidden, because there is nothing to heat with.")
		NOT_OFFERED
	}

	/** What is powered in emergency heat. */
	enum EmergencyOutput implements Choice {
		@Called(label = "auxiliary output", meaning = "The same output as auxiliary heat.")
		AUXILIARY_OUTPUT,
		@Called(label = "own output", meaning = "An output of its own (E), because the equipment has a relay for it.")
		OWN_OUTPUT
	}
}
