package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.HEATING;
import static org.setwright.trade.settings.Group.HEAT_PUMP;
import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.minutes;

import java.util.List;
import org.setwright.trade.catalogue.Setting;

/** How often equipment may start, and how long it rests. */
final class CycleSettings {
	private static final Group CYCLES = new Group("cycle rates");

	private CycleSettings() {
	}

	static List<Setting> all() {
		return List.of(
				CYCLES.setting("HEAT_CYCLES", "heating cycles",
						"How often the first step of heating starts in an hour at half load.",
						choice(CycleRate.class), HEATING),
				CYCLES.setting("AUXILIARY_CYCLES", "auxiliary heat cycles",
						"How often auxiliary heat starts in an hour at half load.",
						choice(CycleRate.class), HEAT_PUMP + " AuxiliaryHeat( )"),
				CYCLES.setting("COOL_CYCLES", "cooling cycles",
						"How often cooling starts in an hour at half load.",
						choice(CycleRate.class), "OutdoorUnit( )"),
				CYCLES.setting("COMPRESSOR_REST", "compressor rest",
						"How long the controller keeps the compressor off before it may start again.",
						minutes(0, 15), "OutdoorUnit( )"));
	}
}
