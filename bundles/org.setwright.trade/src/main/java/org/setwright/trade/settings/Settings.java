package org.setwright.trade.settings;

import java.util.List;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Setting;

/** Every setting of the trade, in the order they are made on a controller. */
public final class Settings {
	private Settings() {
	}

	/** @return the settings, each once */
	public static List<Setting> all() {
		return Stream.of(PowerSettings.all(), EquipmentSettings.all(), HeatPumpSettings.all(), FanSettings.all(),
				CycleSettings.all(), SensorSettings.all(), LimitSettings.all(), VentilationSettings.all(),
				HumiditySettings.all(), ClockSettings.all()).flatMap(List::stream).toList();
	}
}
