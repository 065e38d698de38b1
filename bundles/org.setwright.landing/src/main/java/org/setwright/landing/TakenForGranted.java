package org.setwright.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.setwright.landing.matching.Assignment;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.wall.Terminals;
import org.setwright.trade.Trade;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.FloorSensor;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.IndoorSensor;
import org.setwright.trade.accessories.OutdoorSensor;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.accessories.ZonePanel;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.equipment.AuxiliaryHeat;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.wiring.Wire;

/** What a plan as a whole takes for granted, because nobody has looked. */
final class TakenForGranted {
	private static final List<Class<? extends Fact>> MAY_TAKE_CONDUCTORS = List.of(OutdoorUnit.class, IndoorUnit.class, AuxiliaryHeat.class, ZonePanel.class, Humidifier.class,
			Dehumidifier.class, Ventilator.class, OutdoorSensor.class, IndoorSensor.class, FloorSensor.class);

	private TakenForGranted() {
	}

	static List<Check> of(SetUp setUp, Terminals terminals) {
		List<String> sentences = new ArrayList<>();
		if (setUp.job().entry(Wire.class).presence() == Presence.UNKNOWN) {
			sentences.add("Nobody has listed the conductors at the wall: open it, with the power off, and list each with its colour and both its ends.");
		}
		if (setUp.job().all(Wire.class).size() > Assignment.mostConductors()) {
			sentences.add("More conductors are listed than a wall holds: only the first " + Assignment.mostConductors() + " by colour were looked at.");
		}
		if (setUp.open("SYSTEM_TYPE").isPresent()) {
			sentences.add("The system type is not settled, and with it which calls there are: settle it before landing anything.");
		}
		String unsaid = MAY_TAKE_CONDUCTORS.stream().filter(type -> setUp.job().entry(type).presence() == Presence.UNKNOWN)
				.map(type -> Trade.catalogue().kind(type).one()).collect(Collectors.joining(", "));
		if (!unsaid.isEmpty()) {
			sentences.add("Nobody has said whether there is " + unsaid + ": each may take conductors.");
		}
		if (!terminals.knowsController()) {
			sentences.add("The controller's terminals are not listed: the letters at the wall are the customary ones; compare them with its base.");
		}
		if (!terminals.knowsEquipment()) {
			sentences.add("The equipment's terminals are not listed: the letters there are the customary ones; compare them with its diagram.");
		}
		return sentences.stream().map(Check::of).toList();
	}
}
