package org.setwright.trade.settings;

import java.util.List;
import org.setwright.trade.catalogue.Domain;
import org.setwright.trade.catalogue.Setting;

/** Every setting of the trade, in the order they are made on a controller. */
public final class Settings {
	private Settings() {
	}

	/** @return the settings, each once */
	public static List<Setting> all() {
		return List.of(
				new Setting("CHANGEOVER_VALVE", "changeover valve", "heat pump",
						"In which mode the controller powers the heat pump's changeover valve; the wrong one heats on a call for cooling.",
						Domain.Choices.of(ChangeoverValve.class),
						"OutdoorUnit( kind in ( AIR_SOURCE_HEAT_PUMP, GROUND_SOURCE_HEAT_PUMP ) )"),
				new Setting("COOL_STAGES", "cooling stages", "equipment",
						"How many steps of cooling the controller calls for.", new Domain.Whole(0, 2), Setting.ALWAYS));
	}
}
