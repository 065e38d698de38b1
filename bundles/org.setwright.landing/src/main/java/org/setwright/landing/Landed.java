package org.setwright.landing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Need;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.End;
import org.setwright.landing.plan.Landing;
import org.setwright.landing.plan.Landing.Change;
import org.setwright.landing.wall.Conductor;
import org.setwright.landing.wall.Fit;
import org.setwright.landing.wall.Terminals;
import org.setwright.trade.controller.OldControl;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** Says what is done with a conductor that has been chosen, and what has to be made sure of. Ask in the order of importance. */
final class Landed {
	private static final Comparator<Fit> BETTER = Comparator.comparing(Fit::change).thenComparing(Fit::doubt).thenComparing(Fit::colour);
	private static final Set<TerminalMark> AMBIGUOUS = Set.of(TerminalMark.X, TerminalMark.OTHER);

	private final SetUp setUp;
	private final Terminals terminals;
	private final boolean heatPump;
	private final List<Conductor> free;
	private final List<TerminalMark> usedAtWall = new ArrayList<>();
	private final List<TerminalMark> usedAtEquipment = new ArrayList<>();

	/** @param free the conductors that were not chosen, in {@link Conductor#ORDER} */
	Landed(SetUp setUp, Terminals terminals, boolean heatPump, List<Conductor> free) {
		this.setUp = setUp;
		this.terminals = terminals;
		this.heatPump = heatPump;
		this.free = free;
	}

	Landing landing(Need need, Conductor conductor) {
		Optional<TerminalMark> here = terminals.atWall(need, usedAtWall);
		Optional<TerminalMark> there = need.duty() == Duty.SWITCH ? Optional.empty() : terminals.atEquipment(need, Optional.of(conductor), usedAtEquipment);
		here.ifPresent(usedAtWall::add);
		there.ifPresent(usedAtEquipment::add);
		End atEquipment = new End(conductor.equipment(), there, there.flatMap(terminals::machine));
		Change change = change(need, conductor);
		return new Landing(conductor, need, new End(conductor.control(), here, Optional.empty()), atEquipment, change,
				choice(need, conductor, change), need.source() + "; conductor and terminals: " + SetUp.COMMON_PRACTICE, checks(need, conductor, there));
	}

	private Change change(Need need, Conductor conductor) {
		boolean here = conductor.control().filter(need.atWall()::contains).isPresent();
		boolean there = need.duty() == Duty.SWITCH || conductor.equipment().filter(need.atEquipment()::contains).isPresent()
				|| here && Fit.isPerhapsCommon(conductor, need.duty(), heatPump);
		if (here && (there || conductor.equipment().isEmpty()) || there && conductor.control().isEmpty()) {
			return Change.KEEP;
		}
		return isOpenEnd(conductor.control()) && isOpenEnd(conductor.equipment()) ? Change.NEW : Change.MOVE;
	}

	private static boolean isOpenEnd(Optional<TerminalMark> end) {
		return end.isEmpty() || end.get() == TerminalMark.NOT_LANDED;
	}

	private String choice(Need need, Conductor conductor, Change change) {
		return switch (change) {
			case KEEP -> conductor.equipment().isEmpty() ? "The old control had it on " + conductor.control().orElseThrow().label() + "."
					: "It does this already, and stays.";
			case NEW -> (conductor.isSpare() ? "It is spare; " : "Nobody has said where it is landed; ") + against(need, conductor) + ".";
			case MOVE -> moved(need, conductor) + against(need, conductor) + ".";
		};
	}

	private static String moved(Need need, Conductor conductor) {
		if (conductor.control().filter(need.atWall()::contains).isPresent() || conductor.equipment().filter(need.atEquipment()::contains).isPresent()) {
			return "One of its ends is where it belongs; ";
		} else if (conductor.touches(AMBIGUOUS)) {
			return "Its mark tells nothing of what it does; ";
		}
		return "Where it was landed, on " + Stream.of(conductor.control(), conductor.equipment()).flatMap(Optional::stream).filter(m -> m != TerminalMark.NOT_LANDED)
				.map(TerminalMark::label).distinct().collect(Collectors.joining(" and ")) + ", it can be spared; ";
	}

	/** What speaks for it against the best of those that were not chosen. */
	private String against(Need need, Conductor conductor) {
		Fit fit = Fit.of(conductor, need, heatPump).orElseThrow();
		String colour = fit.colour() == 0 ? "its colour is the customary one" : fit.colour() == 1 ? "its colour is a customary one" : "its colour is not the customary one";
		Optional<Conductor> next = free.stream().filter(c -> Fit.of(c, need, heatPump).isPresent())
				.min(Comparator.comparing(c -> Fit.of(c, need, heatPump).orElseThrow(), BETTER));
		if (next.isEmpty()) {
			return colour;
		}
		Fit other = Fit.of(next.get(), need, heatPump).orElseThrow();
		String named = next.get().label();
		if (fit.change() < other.change()) {
			return colour + ", and " + named + " would mean changing more";
		} else if (fit.change() == other.change() && fit.doubt() < other.doubt()) {
			return colour + ", and less has to be checked than on " + named;
		} else if (fit.change() == other.change() && fit.doubt() == other.doubt() && fit.colour() < other.colour()) {
			return colour + ", unlike " + named;
		}
		return colour + "; " + named + " would do as well, and the order of the list of colours decides";
	}

	private List<Check> checks(Need need, Conductor conductor, Optional<TerminalMark> there) {
		List<Check> checks = new ArrayList<>(need.checks());
		if (!conductor.wire().condition().isKnown() && !isProved(need, conductor)) {
			checks.add(new Check("Ring it out from end to end and against the others.", setUp.place(Wire.class, conductor.item(), "condition")));
		}
		if (need.duty() != Duty.SWITCH) {
			traced(conductor, checks);
		}
		if (need.duty() == Duty.CHANGEOVER) {
			there.flatMap(this::valveContradicts).ifPresent(checks::add);
		}
		return checks;
	}

	private void traced(Conductor conductor, List<Check> checks) {
		if (conductor.equipment().isEmpty()) {
			checks.add(new Check("Trace it to its other end before landing it.", setUp.place(Wire.class, conductor.item(), "atEquipment")));
		}
		if (conductor.touches(AMBIGUOUS)) {
			checks.add(Check.of("Its mark is ambiguous, and X may be the common: trace it, and find out what it does now, before moving it."));
		} else if (Fit.mayBeCommon(conductor, heatPump)) {
			checks.add(Check.of("On some old equipment B is the common, on other it powers a valve: trace it and measure R against it before landing it."));
		}
		if (Fit.endsDisagree(conductor)) {
			checks.add(Check.of("Its ends are landed on " + conductor.control().orElseThrow().label() + " and " + conductor.equipment().orElseThrow().label()
					+ ": it is joined, crossed or misread somewhere, so trace it from end to end."));
		}
	}

	/** It worked on the terminals it stays on: no better test than that. */
	private boolean isProved(Need need, Conductor conductor) {
		boolean worked = setUp.one(OldControl.class).flatMap(o -> o.workedProperly().value()).filter(yes -> yes).isPresent();
		return worked && Fit.of(conductor, need, heatPump).filter(f -> f.change() == 0).isPresent() && conductor.equipment().isPresent();
	}

	private Optional<Check> valveContradicts(TerminalMark there) {
		String set = setUp.word("CHANGEOVER_VALVE").orElse("");
		boolean contradicts = there == TerminalMark.O && set.equals("ENERGISED_IN_HEATING") || there == TerminalMark.B && set.equals("ENERGISED_IN_COOLING");
		return contradicts ? Optional.of(Check.of("The equipment's terminal is " + there.label() + ", which says the opposite of the set-up: read the outdoor unit's diagram, and prove it by a call for cooling."))
				: Optional.empty();
	}
}
