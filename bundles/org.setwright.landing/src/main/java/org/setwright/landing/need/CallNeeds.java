package org.setwright.landing.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.need.Need.Strength;
import org.setwright.trade.equipment.IndoorUnit;
import org.setwright.trade.equipment.OutdoorUnit;
import org.setwright.trade.wiring.EquipmentTerminal;
import org.setwright.trade.wiring.Wire;

/** The calls for heating, cooling and the fan. */
final class CallNeeds {
	private static final String TYPE = "SYSTEM_TYPE";
	private static final String HEATING = "HEAT_STAGES";
	private static final String COOLING = "COOL_STAGES";
	private static final String AUXILIARY = "AUXILIARY_STAGES";
	private static final List<Duty> HEAT_STEPS = List.of(Duty.HEAT, Duty.HEAT_2, Duty.HEAT_3);
	private static final List<Duty> COMPRESSOR_STEPS = List.of(Duty.COMPRESSOR, Duty.COMPRESSOR_2);
	private static final List<Duty> AUXILIARY_STEPS = List.of(Duty.AUXILIARY, Duty.AUXILIARY_2);

	private final SetUp setUp;
	private final List<Need> needs = new ArrayList<>();

	private CallNeeds(SetUp setUp) {
		this.setUp = setUp;
	}

	static List<Need> of(SetUp setUp) {
		CallNeeds calls = new CallNeeds(setUp);
		calls.add();
		return calls.setUp.open(TYPE).<List<Need>>map(open -> calls.needs.stream().map(n -> n.heldOpenBy(open)).toList()).orElse(calls.needs);
	}

	private void add() {
		switch (setUp.word(TYPE).orElseGet(this::likelyType)) {
			case "HEAT_PUMP", "DUAL_FUEL" -> heatPump();
			case "HEATING_ONLY" -> steps(HEAT_STEPS, HEATING, "of heat");
			case "COOLING_ONLY" -> steps(COMPRESSOR_STEPS, COOLING, "of cooling");
			case "SEPARATE_HEATING_AND_COOLING" -> {
				steps(HEAT_STEPS, HEATING, "of heat");
				steps(COMPRESSOR_STEPS, COOLING, "of cooling");
			}
			default -> {
			}
		}
		fan();
	}

	/** As long as the system type is open: what the machines named suggest; every need is then held open by the type. */
	private String likelyType() {
		boolean heats = setUp.one(IndoorUnit.class).flatMap(u -> u.fuel().value()).filter(f -> f != IndoorUnit.Fuel.NO_FUEL).isPresent();
		Optional<OutdoorUnit> outdoor = setUp.one(OutdoorUnit.class);
		if (outdoor.flatMap(u -> u.kind().value()).filter(k -> k != OutdoorUnit.Kind.AIR_CONDITIONER).isPresent()) {
			return "HEAT_PUMP";
		} else if (outdoor.isPresent()) {
			return heats ? "SEPARATE_HEATING_AND_COOLING" : "COOLING_ONLY";
		}
		return heats ? "HEATING_ONLY" : "";
	}

	private void heatPump() {
		Optional<Integer> heat = setUp.count(HEATING);
		Optional<Integer> cool = setUp.count(COOLING);
		steps(COMPRESSOR_STEPS, heat.orElse(0) > cool.orElse(0) || cool.isPresent() && heat.isEmpty() && setUp.open(HEATING).isPresent() ? HEATING : COOLING,
				"of the compressor");
		needs.add(setUp.grounded(Need.of(Duty.CHANGEOVER, Strength.NEEDED, "The changeover valve decides whether the compressor heats or cools."), "CHANGEOVER_VALVE"));
		steps(AUXILIARY_STEPS, AUXILIARY, "of auxiliary heat");
		if (setUp.word("EMERGENCY_OUTPUT").filter("OWN_OUTPUT"::equals).isPresent()) {
			needs.add(setUp.grounded(Need.of(Duty.EMERGENCY, Strength.NEEDED, "The equipment has a relay of its own for emergency heat."), "EMERGENCY_OUTPUT"));
		}
	}

	/** As many steps as settled; while that is open, the first, and those that some terminal already stands for. */
	private void steps(List<Duty> duties, String setting, String what) {
		Optional<Integer> settled = setUp.count(setting);
		for (int i = 0; i < duties.size(); i++) {
			Duty duty = duties.get(i);
			if (settled.isPresent() && i < settled.get()) {
				needs.add(setUp.grounded(Need.of(duty, Strength.NEEDED, "The set-up calls for " + settled.get() + (settled.get() == 1 ? " step " : " steps ") + what + "."), setting));
			} else if (settled.isEmpty() && setUp.open(setting).isPresent() && (i == 0 || hasTerminal(duty))) {
				needs.add(setUp.grounded(Need.of(duty, i == 0 ? Strength.NEEDED : Strength.OPEN, "Nobody has settled how many steps " + what + " to call for."), setting));
			}
		}
	}

	private boolean hasTerminal(Duty duty) {
		return setUp.job().all(EquipmentTerminal.class).stream().anyMatch(t -> t.mark().value().filter(duty.atEquipment()::contains).isPresent())
				|| setUp.job().all(Wire.class).stream().anyMatch(w -> w.atControl().value().filter(duty.atWall()::contains).isPresent()
						|| w.atEquipment().value().filter(duty.atEquipment()::contains).isPresent());
	}

	private void fan() {
		Optional<IndoorUnit.Kind> kind = setUp.one(IndoorUnit.class).flatMap(u -> u.kind().value());
		boolean ducted = kind.filter(k -> k != IndoorUnit.Kind.BOILER && k != IndoorUnit.Kind.ROOM_HEATER).isPresent();
		boolean compressor = needs.stream().anyMatch(n -> n.duty() == Duty.COMPRESSOR);
		if (compressor && (ducted || kind.isEmpty())) {
			needs.add(Need.of(Duty.FAN, Strength.NEEDED, "The coil needs the indoor fan with every call of the compressor."));
		} else if (ducted && setUp.word("FAN_IN_HEAT").filter("CONTROLLER"::equals).isPresent()) {
			needs.add(setUp.grounded(Need.of(Duty.FAN, Strength.NEEDED, "The controller starts the fan with heat."), "FAN_IN_HEAT"));
		} else if (ducted && setUp.open("FAN_IN_HEAT").isPresent()) {
			needs.add(setUp.grounded(Need.of(Duty.FAN, Strength.OPEN, "Nobody has settled who starts the fan with heat."), "FAN_IN_HEAT"));
		} else if (ducted) {
			needs.add(Need.of(Duty.FAN, Strength.WANTED, "The occupants can then run the fan by itself."));
		}
	}
}
