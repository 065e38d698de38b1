package org.setwright.landing.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.need.Need.Strength;
import org.setwright.trade.accessories.Connection;
import org.setwright.trade.accessories.FloorSensor;
import org.setwright.trade.accessories.IndoorSensor;
import org.setwright.trade.accessories.OutdoorSensor;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;

/** Remote sensors on a pair of conductors of their own. */
final class SensorNeeds {
	private SensorNeeds() {
	}

	static List<Need> of(SetUp setUp) {
		List<Need> needs = new ArrayList<>();
		setUp.one(OutdoorSensor.class).ifPresent(s -> needs.addAll(pair(setUp, Duty.OUTDOOR_SENSOR, OutdoorSensor.class, s.connection())));
		setUp.one(IndoorSensor.class).ifPresent(s -> needs.addAll(pair(setUp, Duty.INDOOR_SENSOR, IndoorSensor.class, s.connection())));
		setUp.one(FloorSensor.class).ifPresent(s -> needs.addAll(pair(setUp, Duty.FLOOR_SENSOR, FloorSensor.class, s.connection())));
		return needs.size() <= 2 ? needs : needs.stream()
				.map(n -> n.checking(Check.of("There is more than one wired sensor: trace which pair belongs to which."))).toList();
	}

	private static List<Need> pair(SetUp setUp, Duty duty, Class<? extends Fact> type, Answer<Connection> connection) {
		if (Optional.of(Connection.WIRELESS).equals(connection.value())) {
			return List.of();
		}
		boolean wired = connection.isKnown();
		Need need = Need.of(duty, wired ? Strength.NEEDED : Strength.OPEN, wired ? "A wired sensor takes a pair of its own, which never sees 24 V."
				: "Nobody has said whether the " + duty.label() + " is wired or wireless.");
		return (wired ? need : need.checking(new Check("Find out whether the " + duty.label() + " is wired.", setUp.place(type, 0, "connection")))).parts(2);
	}
}
