package org.setwright.landing.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setwright.landing.need.Need.Strength;
import org.setwright.trade.accessories.Dehumidifier;
import org.setwright.trade.accessories.Humidifier;
import org.setwright.trade.accessories.PoweredBy;
import org.setwright.trade.accessories.Ventilator;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.controller.ControllerTerminal;
import org.setwright.trade.wiring.EquipmentTerminal;
import org.setwright.trade.wiring.TerminalMark;

/** The accessories that the controller switches by wire, and the fault signal. */
final class AccessoryNeeds {
	private AccessoryNeeds() {
	}

	static List<Need> of(SetUp setUp) {
		List<Need> needs = new ArrayList<>();
		setUp.one(Humidifier.class).ifPresent(h -> needs.addAll(switched(setUp, Duty.HUMIDIFIER, "HUMIDIFIER_CONTROL", Humidifier.class, h.poweredBy())));
		setUp.one(Dehumidifier.class).ifPresent(d -> needs.addAll(switched(setUp, Duty.DEHUMIDIFIER, "DEHUMIDIFIER_CONTROL", Dehumidifier.class, terminalPower(d))));
		setUp.one(Ventilator.class).ifPresent(v -> needs.addAll(switched(setUp, Duty.VENTILATOR, "VENTILATOR_CONTROL", Ventilator.class, v.poweredBy())));
		if (setUp.job().all(ControllerTerminal.class).stream().anyMatch(t -> isFault(t.mark()))
				&& setUp.job().all(EquipmentTerminal.class).stream().anyMatch(t -> isFault(t.mark()))) {
			needs.add(Need.of(Duty.FAULT, Strength.WANTED, "Controller and equipment both have a terminal for the fault signal."));
		}
		return needs;
	}

	private static List<Need> switched(SetUp setUp, Duty duty, String setting, Class<? extends Fact> type, Answer<PoweredBy> power) {
		boolean open = setUp.open(setting).isPresent();
		if (!open && setUp.word(setting).filter("CONTROLLER"::equals).isEmpty()) {
			return List.of();
		}
		Need need = setUp.grounded(Need.of(duty, open ? Strength.OPEN : Strength.NEEDED,
				open ? "Nobody has settled who decides when the " + duty.label() + " runs." : "The controller decides when the " + duty.label() + " runs."), setting);
		if (power.value().isEmpty()) {
			return need.checking(new Check("Find out where the " + duty.label() + " takes its power from: one with a transformer of its own takes two conductors.",
					setUp.place(type, 0, "poweredBy"))).parts(1);
		}
		return switch (power.value().get()) {
			case EQUIPMENT_TRANSFORMER -> need.parts(1);
			case OWN_TRANSFORMER -> need.checking(Check.of("A dry contact: neither conductor may touch R or C of the equipment's transformer.")).parts(2);
			case LINE_VOLTAGE -> need.checking(Check.of("The conductor goes to the coil of a 24 V relay; whatever the relay switches at line voltage is an electrician's work.")).parts(1);
		};
	}

	/** A slow speed of the fan is a terminal of the indoor unit and takes its power there. */
	private static Answer<PoweredBy> terminalPower(Dehumidifier dryer) {
		boolean slowFan = Optional.of(Dehumidifier.Kind.SLOW_FAN).equals(dryer.kind().value());
		return slowFan ? Answer.of(PoweredBy.EQUIPMENT_TRANSFORMER) : dryer.poweredBy();
	}

	private static boolean isFault(Answer<TerminalMark> mark) {
		return Optional.of(TerminalMark.L).equals(mark.value());
	}
}
