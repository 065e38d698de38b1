package org.setwright.landing.wall;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.setwright.landing.need.Duty;
import org.setwright.landing.need.Need;
import org.setwright.landing.wall.Conductor.Fitness;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;
import org.setwright.trade.wiring.Wire.Colour;

/**
 * What it costs to land one conductor for one need, in three parts of which the first always goes before the next. All
 * of it is common practice: touch as little as possible, prefer what is known, then follow the custom of colours.
 *
 * @param change how much is changed: 0 nothing, 1 or 2 for each end that is not yet where it belongs
 * @param doubt how much has to be made sure of first
 * @param colour 0 for the customary colour, 4 for one that misleads
 */
public record Fit(int change, int doubt, int colour) {
	/** Largest change, doubt and colour there are. */
	public static final Fit WORST = new Fit(4, 9, 4);
	private static final Set<TerminalMark> AMBIGUOUS = Set.of(TerminalMark.X, TerminalMark.OTHER);
	private static final List<Colour> CUSTOMARY_ELSEWHERE = List.of(Colour.WHITE, Colour.YELLOW, Colour.GREEN, Colour.BLUE,
			Colour.LIGHT_BLUE, Colour.ORANGE, Colour.BROWN);

	/**
	 * @param heatPump whether the job has a changeover valve, so that a B is one
	 * @return empty when {@code conductor} must never serve {@code need}
	 */
	public static Optional<Fit> of(Conductor conductor, Need need, boolean heatPump) {
		return allowed(conductor, need.duty(), heatPump)
				? Optional.of(new Fit(change(conductor, need, heatPump), doubt(conductor, heatPump), colour(conductor, need.duty())))
				: Optional.empty();
	}

	private static boolean allowed(Conductor conductor, Duty duty, boolean heatPump) {
		if (duty.isSensor() || conductor.fitness() == Fitness.SENSOR) {
			return duty.isSensor() && conductor.fitness() == Fitness.SENSOR;
		} else if (conductor.fitness() != Fitness.FIT) {
			return false;
		} else if (duty == Duty.SWITCH) {
			return true;
		}
		boolean mayBeCommon = conductor.touches(Set.of(TerminalMark.C, TerminalMark.X)) || !heatPump && conductor.touches(Set.of(TerminalMark.B));
		return duty.isSupply() ? !mayBeCommon : !conductor.touches(Conductor.HOT);
	}

	private static int change(Conductor conductor, Need need, boolean heatPump) {
		boolean wall = conductor.control().filter(need.atWall()::contains).isPresent();
		boolean equipment = need.duty() == Duty.SWITCH || conductor.equipment().filter(need.atEquipment()::contains).isPresent();
		boolean perhaps = isPerhapsCommon(conductor, need.duty(), heatPump);
		return (wall ? 0 : change(conductor.control(), false)) + (equipment ? 0 : change(conductor.equipment(), wall && perhaps));
	}

	private static int change(Optional<TerminalMark> end, boolean stays) {
		return stays ? 0 : end.isEmpty() || end.get() == TerminalMark.NOT_LANDED ? 1 : 2;
	}

	/** @return whether the other end is on a B or X that may be the common that {@code duty} asks for */
	public static boolean isPerhapsCommon(Conductor conductor, Duty duty, boolean heatPump) {
		return duty == Duty.COMMON && mayBeCommon(conductor, heatPump);
	}

	/** @return whether its end at the equipment is on a mark that is the common on some old equipment */
	public static boolean mayBeCommon(Conductor conductor, boolean heatPump) {
		return conductor.equipment().filter(m -> m == TerminalMark.X || !heatPump && m == TerminalMark.B).isPresent();
	}

	private static int doubt(Conductor conductor, boolean heatPump) {
		int doubt = conductor.wire().condition().isKnown() ? 0 : 1;
		doubt += conductor.equipment().isEmpty() ? 2 : 0;
		doubt += conductor.control().isEmpty() ? 1 : 0;
		doubt += conductor.touches(AMBIGUOUS) || mayBeCommon(conductor, heatPump) ? 3 : 0;
		return doubt + (endsDisagree(conductor) ? 2 : 0);
	}

	/** @return whether its ends are landed on terminals that no duty joins, which means it is joined, crossed or misread somewhere */
	public static boolean endsDisagree(Conductor conductor) {
		Optional<TerminalMark> wall = conductor.control().filter(m -> m != TerminalMark.NOT_LANDED);
		Optional<TerminalMark> equipment = conductor.equipment().filter(m -> m != TerminalMark.NOT_LANDED);
		return wall.isPresent() && equipment.isPresent() && !wall.equals(equipment)
				&& List.of(Duty.values()).stream().filter(d -> d != Duty.SWITCH).noneMatch(d -> d.atWall().contains(wall.get()) && d.atEquipment().contains(equipment.get()));
	}

	private static int colour(Conductor conductor, Duty duty) {
		Optional<Colour> colour = conductor.wire().colour().value();
		if (colour.isEmpty()) {
			return 3;
		}
		int custom = duty.colours().indexOf(colour.get());
		if (custom >= 0) {
			return custom == 0 ? 0 : 1;
		}
		return colour.get() == Wire.Colour.RED ? WORST.colour() : CUSTOMARY_ELSEWHERE.contains(colour.get()) ? 3 : 2;
	}
}
