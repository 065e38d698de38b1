package org.setwright.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Economy;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Unserved;
import org.setwright.landing.plan.Unserved.Remedy;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.wiring.Wire;

/** What helps where no conductor is left, the usual order of preference of the trade first. */
final class Remedies {
	private static final String PULL = "Pull a new cable with a conductor for this and two to spare.";
	private static final String TWO_OVER_ONE = "Fit a pair of diode boxes, one at each end, which carry two calls over one conductor and free another; not for R or C themselves, and only where both makers allow it.";
	private static final String PLUG_IN = "Feed the controller from a plug-in 24 V transformer of its own, where its maker allows that; its two conductors never meet R or C of the equipment except as the maker shows.";
	private static final String BATTERIES = "Take a controller that runs on batteries, or one whose maker says that it needs no common with this equipment.";

	private final SetUp setUp;
	private final Map<Need, Conductor> landed;

	/** @param landed what has been landed */
	Remedies(SetUp setUp, Map<Need, Conductor> landed) {
		this.setUp = setUp;
		this.landed = landed;
	}

	/** @param controller whether the controller has a terminal for {@code need}, so that the equipment is the one that has not */
	static Unserved noTerminal(Need need, boolean controller) {
		String because = controller ? "The equipment has no terminal for it, as entered in the job." : "The controller has no terminal for it, as entered in the job.";
		List<String> remedies = new ArrayList<>();
		if (!controller) {
			remedies.add("Take a controller that has the terminal.");
		} else if (need.duty() == Duty.COMMON) {
			remedies.add("Let a qualified person bring the common out from the transformer's own secondary side.");
		}
		remedies.add("Compare the list of terminals with the " + (controller ? "equipment's diagram" : "controller's base") + ": one may be missing from it or differently marked.");
		return new Unserved(need, because, SetUp.COMMON_PRACTICE, remedies.stream().map(Remedies::usual).toList());
	}

	Unserved unserved(Need need) {
		List<String> remedies = notListed() ? List.of("List the conductors at the wall, with the power off, and plan again.") : need.duty().isSensor() ? sensor() : switch (need.duty()) {
			case SUPPLY, HEATING_SUPPLY, COOLING_SUPPLY, SWITCH -> List.of(PULL);
			case COMMON -> common();
			case FAN -> List.of(PULL, TWO_OVER_ONE);
			case HEAT_2, HEAT_3 -> step("Let the equipment's own board bring in the step by time, and call one step less.");
			case COMPRESSOR_2, AUXILIARY_2 -> step("Call one step less, where the makers allow it.");
			case EMERGENCY -> List.of("Set the emergency heat output to the auxiliary output.", PULL, TWO_OVER_ONE);
			case HUMIDIFIER, DEHUMIDIFIER, VENTILATOR -> List.of(PULL, "Let a control of its own, or the equipment's board, run the " + need.duty().label() + ".", TWO_OVER_ONE);
			case FAULT -> List.of("Go without: the fault can be read at the equipment.");
			default -> List.of(PULL, TWO_OVER_ONE);
		};
		return new Unserved(need, because(need), SetUp.COMMON_PRACTICE, remedies.stream().map(Remedies::usual).toList());
	}

	private boolean notListed() {
		return setUp.job().entry(Wire.class).presence() == Presence.UNKNOWN;
	}

	private String because(Need need) {
		if (notListed()) {
			return "Nobody has listed the conductors at the wall.";
		} else if (need.duty().isSensor()) {
			return "No sound pair on sensor terminals reaches the wall, and a conductor beside 24 V is none.";
		}
		return switch (need.strength()) {
			case NEEDED -> "No conductor fit for it is left: the others already do what the job needs, or what is more important.";
			case OPEN -> "No conductor is left for it, should it turn out to be needed.";
			case WANTED -> "No conductor is left for it, and the job works without.";
		};
	}

	private List<String> common() {
		List<String> remedies = new ArrayList<>(List.of(PULL, PLUG_IN, TWO_OVER_ONE));
		boolean fan = landed.keySet().stream().anyMatch(n -> n.duty() == Duty.FAN);
		if (fan && setUp.finding(Economy.FAN).isEmpty()) {
			remedies.add("Give up the fan's conductor for the common, only if the equipment starts its fan by itself in heat and the occupants agree to lose the fan switch; no rule of the book allows it on this job.");
		}
		remedies.add(BATTERIES);
		return remedies;
	}

	private List<String> step(String first) {
		return List.of(first, PULL, TWO_OVER_ONE, "Join it to the step before at the equipment, where its maker's diagram allows that; both then run together.");
	}

	private static List<String> sensor() {
		return List.of("Pull a pair of its own, twisted or shielded as the sensor's maker says, away from line voltage.", "Take a wireless sensor that the controller knows.", "Do without it, and leave what depends on it off.");
	}

	private static Remedy usual(String sentence) {
		return new Remedy(sentence, SetUp.COMMON_PRACTICE);
	}
}
