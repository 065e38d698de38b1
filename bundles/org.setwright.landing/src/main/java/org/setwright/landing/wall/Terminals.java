package org.setwright.landing.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.SetUp;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.controller.ControllerTerminal;
import org.setwright.trade.controller.Controller;
import org.setwright.trade.wiring.EquipmentTerminal;
import org.setwright.trade.wiring.EquipmentTerminal.Machine;
import org.setwright.trade.wiring.TerminalMark;

/**
 * The terminals on both sides. Where the job lists them, only those are used; where it does not, the customary letters
 * stand in, and the plan says so.
 */
public final class Terminals {
	private final Optional<List<TerminalMark>> controller;
	private final Optional<List<TerminalMark>> equipment;
	private final Map<TerminalMark, Machine> machines = new HashMap<>();
	private final Optional<String> valve;
	private final Optional<Controller> abilities;
	private final boolean heatPump;
	private final boolean zonePanel;

	private Terminals(SetUp setUp, boolean heatPump) {
		controller = listed(setUp, ControllerTerminal.class, setUp.job().all(ControllerTerminal.class).stream().map(t -> t.mark().value()).toList());
		equipment = listed(setUp, EquipmentTerminal.class, setUp.job().all(EquipmentTerminal.class).stream().map(t -> t.mark().value()).toList());
		zonePanel = setUp.word("CALLS_GO_TO").filter("ZONE_PANEL"::equals).isPresent();
		abilities = setUp.one(Controller.class);
		setUp.job().all(EquipmentTerminal.class).forEach(t -> t.mark().value().ifPresent(mark -> t.belongsTo().value().ifPresent(m -> machines.merge(mark, m, this::nearer))));
		valve = setUp.word("CHANGEOVER_VALVE");
		this.heatPump = heatPump;
	}

	/** Of two machines with the same letters, the zone panel where the calls go to it, otherwise the one listed first. */
	private Machine nearer(Machine first, Machine other) {
		return zonePanel && other == Machine.ZONE_PANEL ? other : first;
	}

	/** @param heatPump whether the job has a changeover valve */
	public static Terminals of(SetUp setUp, boolean heatPump) {
		return new Terminals(setUp, heatPump);
	}

	/** Unknown as soon as one terminal is listed whose letters nobody has read. */
	private static Optional<List<TerminalMark>> listed(SetUp setUp, Class<? extends Fact> type, List<Optional<TerminalMark>> marks) {
		boolean known = setUp.job().entry(type).presence() == Presence.PRESENT && marks.stream().allMatch(Optional::isPresent);
		return known ? Optional.of(marks.stream().map(Optional::get).toList()) : Optional.empty();
	}

	/** @return whether the job lists every terminal of the controller */
	public boolean knowsController() {
		return controller.isPresent();
	}

	/** @return whether the job lists every terminal of the equipment */
	public boolean knowsEquipment() {
		return equipment.isPresent();
	}

	/** @return which machine a terminal is on, when the job says so; the zone panel where the calls go to it */
	public Optional<Machine> machine(TerminalMark mark) {
		return Optional.ofNullable(machines.get(mark)).or(() -> zonePanel ? Optional.of(Machine.ZONE_PANEL) : Optional.empty());
	}

	/** @param used marks of the controller that other conductors have taken @return where to land {@code need} at the wall; empty when the controller has no terminal for it */
	public Optional<TerminalMark> atWall(Need need, List<TerminalMark> used) {
		List<TerminalMark> wanted = need.duty() == Duty.CHANGEOVER ? valveMarks() : part(need, need.atWall());
		return wanted.stream().filter(m -> !lacks(need.duty())).filter(m -> controller.isEmpty() || controller.get().contains(m)).filter(m -> need.of() > 1 || !used.contains(m)).findFirst();
	}

	/** Each transformer has an R of its own. @return where to land {@code need} at the equipment, where {@code conductor} sits now if that will do; empty when there is no terminal for it */
	public Optional<TerminalMark> atEquipment(Need need, Optional<Conductor> conductor, List<TerminalMark> used) {
		List<TerminalMark> wanted = new ArrayList<>();
		conductor.flatMap(Conductor::equipment).filter(m -> need.of() == 1)
				.filter(m -> need.duty().atEquipment().contains(m) || conductor.filter(c -> Fit.isPerhapsCommon(c, need.duty(), heatPump)).isPresent())
				.filter(m -> m != TerminalMark.X || !offers(TerminalMark.C)).ifPresent(wanted::add);
		wanted.addAll(need.duty() == Duty.CHANGEOVER ? valveMarks() : part(need, need.atEquipment()));
		if (need.duty() == Duty.COMMON) {
			wanted.add(TerminalMark.X);
			wanted.addAll(heatPump ? List.of() : List.of(TerminalMark.B));
		}
		return wanted.stream().filter(this::mayBeThere).filter(m -> need.of() > 1 || need.duty().isSupply() || !used.contains(m)).findFirst();
	}

	/** @return whether the controller's sheet, as entered in the job, rules an output or input out */
	private boolean lacks(Duty duty) {
		return abilities.map(c -> switch (duty) {
			case CHANGEOVER -> c.runsHeatPumps();
			case HUMIDIFIER, DEHUMIDIFIER -> c.humidityOutput();
			case VENTILATOR -> c.ventilationOutput();
			case OUTDOOR_SENSOR -> c.outdoorSensorInput();
			case INDOOR_SENSOR, FLOOR_SENSOR -> c.indoorSensorInput();
			default -> Answer.<Boolean>unknown();
		}).flatMap(Answer::value).filter(able -> !able).isPresent();
	}

	private boolean offers(TerminalMark mark) {
		return equipment.isPresent() && equipment.get().contains(mark);
	}

	private boolean mayBeThere(TerminalMark mark) {
		return equipment.isEmpty() || equipment.get().contains(mark);
	}

	/** Of a pair on terminals of two letters, each conductor its own. */
	private static List<TerminalMark> part(Need need, List<TerminalMark> marks) {
		return need.of() > 1 && marks.size() > 1 ? List.of(marks.get(Math.min(need.part(), marks.size()) - 1)) : marks;
	}

	private List<TerminalMark> valveMarks() {
		return switch (valve.orElse("")) {
			case "ENERGISED_IN_COOLING" -> List.of(TerminalMark.O, TerminalMark.O_B);
			case "ENERGISED_IN_HEATING" -> List.of(TerminalMark.B, TerminalMark.O_B);
			default -> List.of(TerminalMark.O_B, TerminalMark.O, TerminalMark.B);
		};
	}
}
