package org.setwright.trade.settings;

import static org.setwright.trade.settings.Group.choice;

import java.util.List;
import org.setwright.trade.catalogue.Called;
import org.setwright.trade.catalogue.Choice;
import org.setwright.trade.catalogue.Setting;

/** Which sensors count. */
final class SensorSettings {
	private static final Group SENSORS = new Group("sensors");

	private SensorSettings() {
	}

	static List<Setting> all() {
		return List.of(
				SENSORS.setting("ROOM_TEMPERATURE_FROM", "room temperature from",
						"Which sensor the controller heats and cools by.",
						choice(RoomSensor.class), Setting.ALWAYS),
				SENSORS.setting("OUTDOOR_TEMPERATURE_FROM", "outdoor temperature from",
						"Where the controller takes the outdoor temperature from.",
						choice(OutdoorSource.class), "OutdoorSensor( )"),
				SENSORS.setting("FLOOR_SENSOR_FOR", "floor sensor for",
						"What the floor sensor's reading decides.",
						choice(FloorUse.class), "FloorSensor( )"));
	}

	/** Which sensor counts. */
	enum RoomSensor implements Choice {
		@Called(label = "own sensor", meaning = "The one in the controller.")
		OWN_SENSOR,
		@Called(label = "remote sensor", meaning = "The remote indoor sensor alone.")
		REMOTE_SENSOR,
		@Called(label = "both averaged", meaning = "The mean of the controller's own and the remote sensor.")
		BOTH_AVERAGED
	}

	/** Where the outdoor temperature comes from. */
	enum OutdoorSource implements Choice {
		@Called(label = "wired sensor", meaning = "A sensor on two conductors of its own.")
		WIRED_SENSOR,
		@Called(label = "wireless sensor", meaning = "A sensor by radio.")
		WIRELESS_SENSOR
	}

	/** What a floor sensor decides. */
	enum FloorUse implements Choice {
		@Called(label = "limit only", meaning = "The room decides, and the floor only stops the heat when it is too warm.")
		LIMIT_ONLY,
		@Called(label = "floor temperature", meaning = "The floor itself is held at a temperature.")
		FLOOR_TEMPERATURE
	}
}
