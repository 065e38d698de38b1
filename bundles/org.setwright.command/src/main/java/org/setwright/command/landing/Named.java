package org.setwright.command.landing;

import java.util.Locale;
import java.util.Optional;
import org.setwright.landing.need.Need;
import org.setwright.landing.plan.End;
import org.setwright.landing.wall.Conductor;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.wiring.TerminalMark;

/** What the parts of a plan are called. */
final class Named {
	private Named() {
	}

	/** @return "light blue 18 AWG" */
	static String conductor(Conductor conductor) {
		return conductor.label() + gauge(conductor, " ");
	}

	/** @return the gauge after {@code before}, or nothing when it is unknown */
	static String gauge(Conductor conductor, String before) {
		return conductor.wire().gauge().value().map(Quantity::toString).map(g -> before + g).orElse("");
	}

	/** @return where a conductor that is not landed sits now */
	static String now(Conductor conductor) {
		return conductor.isSpare() ? "spare" : "wall " + mark(conductor.control()) + ", equipment " + mark(conductor.equipment());
	}

	/** @return an end with its machine */
	static String equipment(End end) {
		return end.text() + end.machine().map(m -> " (" + m.label() + ")").orElse("");
	}

	/** @return for people and files */
	static String strength(Need need) {
		return need.strength().name().toLowerCase(Locale.ROOT).replace("open", "perhaps needed");
	}

	/** @return the letters, or "?" when nobody has said */
	static String mark(Optional<TerminalMark> mark) {
		return mark.map(TerminalMark::label).orElse("?");
	}
}
