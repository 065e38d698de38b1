package org.setwright.landing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.setwright.landing.matching.Assignment;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Economy;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.Need.Strength;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Fit;

/**
 * What landing and leaving costs on one job. The only conductor that already does what the job needs is not taken from
 * it to serve something else: a plan robs no call to feed another. It may go only where a rule of the book lets the duty
 * do without, or where the duty is not certainly needed.
 */
final class Costs implements Assignment.Question {
	private final List<Need> needs;
	private final boolean heatPump;
	private final Map<Need, Economy> economies = new HashMap<>();
	private final Map<Conductor, Need> bound;

	/** @param needs those that both sides have a terminal for @param conductors those that may be landed */
	Costs(SetUp setUp, List<Need> needs, List<Conductor> conductors) {
		this.needs = needs;
		heatPump = needs.stream().anyMatch(n -> n.duty() == Duty.CHANGEOVER);
		needs.forEach(n -> Economy.of(setUp, n, needs).ifPresent(e -> economies.put(n, e)));
		bound = bound(conductors);
	}

	boolean heatPump() {
		return heatPump;
	}

	Optional<Economy> economy(Need need) {
		return Optional.ofNullable(economies.get(need));
	}

	@Override
	public Optional<Fit> fit(Need need, Conductor conductor) {
		return bound.getOrDefault(conductor, need).equals(need) ? Fit.of(conductor, need, heatPump) : Optional.empty();
	}

	@Override
	public int without(Need need) {
		return economy(need).map(e -> Math.min(e.weight(), need.weight())).orElse(need.weight());
	}

	private Map<Conductor, Need> bound(List<Conductor> conductors) {
		Map<Conductor, Need> found = new HashMap<>();
		for (Need need : needs) {
			if (need.strength() == Strength.NEEDED && need.of() == 1 && economy(need).isEmpty()) {
				Set<Conductor> doing = conductors.stream().filter(c -> Fit.of(c, need, heatPump).isPresent() && does(c, need)).collect(Collectors.toSet());
				if (doing.size() == 1) {
					found.putIfAbsent(doing.iterator().next(), need);
				}
			}
		}
		return found;
	}

	private static boolean does(Conductor conductor, Need need) {
		return conductor.control().filter(need.atWall()::contains).isPresent()
				&& (conductor.equipment().isEmpty() || conductor.equipment().filter(need.atEquipment()::contains).isPresent());
	}
}
