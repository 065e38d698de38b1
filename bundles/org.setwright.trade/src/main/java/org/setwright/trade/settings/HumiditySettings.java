package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.choice;
import static org.setwright.trade.settings.Group.degrees;
import static org.setwright.trade.settings.Group.percent;

import java.util.List;
import org.setwright.trade.accessories.ControlledBy;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Setting;

/** Moisture, in winter and in summer. */
final class HumiditySettings {
	private static final Group HUMIDITY = new Group("humidity");
	private static final String HUMIDIFIED = "Humidifier( controlledBy == CONTROLLER )";
	private static final String DRIED = "Dehumidifier( controlledBy == CONTROLLER )";

	private HumiditySettings() {
	}

	static List<Setting> all() {
		return List.of(
				HUMIDITY.setting("HUMIDIFIER_CONTROL", "humidifier control",
						"Who decides when the humidifier runs.",
						choice(ControlledBy.class), "Humidifier( )"),
				HUMIDITY.setting("HUMIDIFIER_RUNS", "humidifier runs",
						"What has to be going on before the humidifier may run.",
						choice(RunsWith.class), HUMIDIFIED),
				HUMIDITY.setting("WINTER_HUMIDITY", "winter humidity limit",
						"The most moisture the controller adds, so that windows stay dry at the design temperature.",
						percent(0, 50), HUMIDIFIED),
				HUMIDITY.setting("DEHUMIDIFIER_CONTROL", "dehumidifier control",
						"Who decides when the dehumidifier runs.",
						choice(ControlledBy.class), "Dehumidifier( )"),
				HUMIDITY.setting("SUMMER_HUMIDITY", "summer humidity limit",
						"The moisture at which drying starts.",
						percent(40, 70), DRIED),
				HUMIDITY.setting("DRYING_OUTPUT", "drying output",
						"Whether the output calls for drying by being powered or by losing power.",
						choice(Dehumidifier.TerminalActs.class), DRIED),
				HUMIDITY.setting("OVERCOOLING", "overcooling",
						"How far below the cooling set point the controller may cool to dry the air.",
						degrees(0, 3), Setting.OPTIONAL));
	}

	/** What has to be going on. */
	enum RunsWith implements Choice {
		@Called(label = "with heat", meaning = "Only while a call for heat moves warm air.")
		WITH_HEAT,
		@Called(label = "with fan", meaning = "Whenever the indoor fan runs.")
		WITH_FAN,
		@Called(label = "starts fan", meaning = "At any time, starting the indoor fan by itself.")
		STARTS_FAN
	}
}
