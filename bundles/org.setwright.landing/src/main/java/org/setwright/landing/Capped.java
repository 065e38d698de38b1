package org.setwright.landing;

import java.util.Optional;
import java.util.Set;
import org.setwright.landing.need.Check;
import org.setwright.landing.need.SetUp;
import org.setwright.landing.plan.Unused;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** Says what is done with a conductor that nothing is landed on. */
final class Capped {
	private static final String CAP = "Cap both its ends and tag it as spare.";

	private Capped() {
	}

	static Unused of(SetUp setUp, Conductor conductor, boolean heatPump) {
		return switch (conductor.fitness()) {
			case DAMAGED -> unused(conductor, "Isolate both its ends, cap them and mark it as bad.",
					"It is " + conductor.wire().condition().value().map(Wire.Condition::label).orElse("damaged") + ", and nothing is ever landed on it.");
			case THICK -> new Unused(conductor, "Leave it alone until a qualified person has measured it.",
					"At " + conductor.wire().gauge().value().orElseThrow() + " it is as thick as a line-voltage conductor.", SetUp.COMMON_PRACTICE,
					Optional.of(new Check("Let a qualified person find out what it carries.", setUp.place(Wire.class, conductor.item(), "gauge"))));
			case SENSOR -> unused(conductor, "Cap both its ends; never land it on a 24 V terminal.", "It belongs to a sensor pair, and no wired sensor is to be landed on it.");
			case CONTRADICTORY -> new Unused(conductor, "Land it nowhere until it is traced from end to end.",
					"It is on " + conductor.control().orElseThrow().label() + " at the wall and on " + conductor.equipment().orElseThrow().label()
							+ " at the equipment: one of the two is wrong, and landed like that it does damage.", SetUp.COMMON_PRACTICE,
					Optional.of(new Check("Trace it from end to end.", setUp.place(Wire.class, conductor.item(), "atEquipment"))));
			case FIT -> spare(conductor, heatPump);
		};
	}

	private static Unused spare(Conductor conductor, boolean heatPump) {
		if (conductor.isSpare()) {
			return unused(conductor, CAP, "It is spare, and nothing wants it.");
		} else if (conductor.touches(Conductor.HOT)) {
			return unused(conductor, "Take it off the supply at the equipment, cap both its ends and tag it as spare.", "One supply is enough, and a loose end would carry 24 V.");
		} else if (conductor.touches(Set.of(TerminalMark.O, TerminalMark.B, TerminalMark.O_B)) && !heatPump) {
			return unused(conductor, CAP, "Nothing here has a changeover valve; O or B in use suggests a heat pump, so read the outdoor unit's nameplate first.");
		} else if (conductor.touches(Set.of(TerminalMark.X, TerminalMark.OTHER))) {
			return unused(conductor, "Leave it on its terminal at the equipment until it is traced, and cap its end at the wall.", "Its mark is ambiguous, and nothing wants it.");
		}
		return unused(conductor, CAP, "Nothing the job needs is left for it.");
	}

	private static Unused unused(Conductor conductor, String doThis, String because) {
		return new Unused(conductor, doThis, because, SetUp.COMMON_PRACTICE, Optional.empty());
	}
}
