package org.setwright.landing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.setwright.engine.outcome.Outcome;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Needs;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.wiring.Wire;

/** Tries every way to land the conductors of a small job, and keeps the best. */
final class AllWays {
	private final Costs costs;
	private final List<Need> needs;
	private final List<Conductor> conductors;
	private Worth best;

	private AllWays(Outcome outcome) {
		costs = Worth.costs(outcome);
		needs = Needs.of(outcome);
		List<Wire> wires = outcome.job().all(Wire.class);
		conductors = IntStream.range(0, wires.size()).mapToObj(i -> new Conductor(i, wires.get(i))).toList();
	}

	static Worth best(Outcome outcome) {
		AllWays ways = new AllWays(outcome);
		ways.land(0, new HashMap<>());
		return ways.best;
	}

	private void land(int conductor, Map<Need, Conductor> landed) {
		if (conductor == conductors.size()) {
			boolean whole = landed.keySet().stream().allMatch(n -> landed.keySet().stream().filter(m -> m.duty() == n.duty()).count() == n.of());
			Worth worth = Worth.of(costs, needs, landed);
			if (whole && (best == null || worth.compareTo(best) < 0)) {
				best = worth;
			}
			return;
		}
		land(conductor + 1, landed);
		for (Need need : needs) {
			if (!landed.containsKey(need) && costs.fit(need, conductors.get(conductor)).isPresent()) {
				landed.put(need, conductors.get(conductor));
				land(conductor + 1, landed);
				landed.remove(need);
			}
		}
	}
}
