package org.setwright.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.matching.Assignment;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Economy;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Needs;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Shared;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.plan.Warning;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Terminals;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** Works out one plan: what is needed, what could serve it, which choice costs least, and how to say it. */
final class Planner {
	private final SetUp setUp;

	Planner(Outcome outcome) {
		setUp = new SetUp(outcome);
	}

	LandingPlan plan() {
		List<Warning> stops = Stops.of(setUp);
		if (!stops.isEmpty()) {
			return new LandingPlan(stops, List.of(), List.of(), List.of(), List.of(), List.of(), Precautions.of(setUp));
		}
		List<Need> needs = Needs.of(setUp.outcome());
		boolean heatPump = needs.stream().anyMatch(n -> n.duty() == Duty.CHANGEOVER);
		Terminals terminals = Terminals.of(setUp, heatPump);
		List<Unserved> unserved = new ArrayList<>();
		List<Need> possible = withTerminal(needs, terminals, unserved);
		List<Conductor> conductors = conductors();
		List<Conductor> looked = conductors.stream().sorted(Conductor.ORDER).limit(Assignment.mostConductors()).toList();
		Costs costs = new Costs(setUp, possible, looked);
		Map<Need, Conductor> landed = Assignment.best(possible, looked, costs).landed();
		List<Shared> shared = new ArrayList<>();
		Remedies remedies = new Remedies(setUp, landed);
		possible.stream().filter(n -> !landed.containsKey(n)).forEach(n -> without(n, costs, landed, shared, unserved, remedies));
		unserved.sort(java.util.Comparator.comparing(Unserved::need, Need.ORDER));
		return new LandingPlan(List.of(), landings(landed, looked, terminals, heatPump), shared, unused(conductors, landed, heatPump), unserved, TakenForGranted.of(setUp, terminals),
				Precautions.of(setUp));
	}

	private List<Conductor> conductors() {
		List<Wire> wires = setUp.job().all(Wire.class);
		return IntStream.range(0, wires.size()).mapToObj(i -> new Conductor(i, wires.get(i))).toList();
	}

	/** Sets aside what no terminal stands for on one of the two sides. */
	private List<Need> withTerminal(List<Need> needs, Terminals terminals, List<Unserved> unserved) {
		List<Need> possible = new ArrayList<>();
		List<TerminalMark> wall = new ArrayList<>();
		List<TerminalMark> equipment = new ArrayList<>();
		for (Need need : needs) {
			Optional<TerminalMark> here = terminals.atWall(need, wall);
			Optional<TerminalMark> there = terminals.atEquipment(need, Optional.empty(), equipment);
			if (here.isPresent() && (there.isPresent() || need.duty().isSensor() || need.duty() == Duty.SWITCH)) {
				possible.add(need);
				wall.add(here.get());
				there.ifPresent(equipment::add);
			} else {
				add(Remedies.noTerminal(need, here.isPresent()), unserved);
			}
		}
		return possible;
	}

	private static void without(Need need, Costs costs, Map<Need, Conductor> landed, List<Shared> shared, List<Unserved> unserved, Remedies remedies) {
		Optional<Economy> economy = costs.economy(need);
		Optional<Conductor> with = economy.flatMap(e -> landed.entrySet().stream().filter(l -> l.getKey().duty() == e.with()).map(Map.Entry::getValue).findFirst());
		if (with.isPresent()) {
			shared.add(new Shared(need, with.get(), economy.get()));
		} else {
			add(remedies.unserved(need), unserved);
		}
	}

	private static void add(Unserved one, List<Unserved> unserved) {
		if (one.need().part() == 1) {
			unserved.add(one);
		}
	}

	private List<Landing> landings(Map<Need, Conductor> landed, List<Conductor> looked, Terminals terminals, boolean heatPump) {
		List<Conductor> free = looked.stream().filter(c -> !landed.containsValue(c)).toList();
		Landed writer = new Landed(setUp, terminals, heatPump, free);
		return landed.entrySet().stream().map(l -> writer.landing(l.getKey(), l.getValue())).toList();
	}

	private List<Unused> unused(List<Conductor> conductors, Map<Need, Conductor> landed, boolean heatPump) {
		return conductors.stream().filter(c -> !landed.containsValue(c)).map(c -> Capped.of(setUp, c, heatPump)).toList();
	}
}
