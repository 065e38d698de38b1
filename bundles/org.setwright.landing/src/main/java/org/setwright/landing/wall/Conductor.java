package org.setwright.landing.wall;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.setwright.trade.catalogue.Answer;
import org.setwright.trade.catalogue.Quantity;
import org.setwright.trade.catalogue.Unit;
import org.setwright.trade.wiring.TerminalMark;
import org.setwright.trade.wiring.Wire;

/** One conductor at the wall. @param item its place among the job's wires, from 0 */
public record Conductor(int item, Wire wire) {
	/** Marks that carry the transformer's 24 V. */
	public static final Set<TerminalMark> HOT = Set.of(TerminalMark.R, TerminalMark.RH, TerminalMark.RC);
	private static final Set<TerminalMark> SENSOR = Set.of(TerminalMark.S1, TerminalMark.S2);
	private static final Set<TerminalMark> NO_VOLTAGE = Set.of(TerminalMark.NOT_LANDED, TerminalMark.OTHER);
	private static final double THICK_AWG = 14;

	/** By what is known about them and not by their place in the list, so that the list may be written in any order. */
	public static final Comparator<Conductor> ORDER = Comparator.comparing((Conductor c) -> rank(c.wire.colour()))
			.thenComparing(c -> rank(c.wire.atControl())).thenComparing(c -> rank(c.wire.atEquipment()))
			.thenComparing(c -> rank(c.wire.condition())).thenComparing(c -> number(c.wire.gauge())).thenComparing(c -> number(c.wire.length()))
			.thenComparing(Conductor::item);

	/** Whether a conductor may be used at all. */
	public enum Fitness {
		/** It may be used; it may still have to be checked first. */
		FIT,
		/** Broken or shorted. */
		DAMAGED,
		/** 14 AWG or thicker: what electricians pull for line voltage. */
		THICK,
		/** Part of a sensor pair, which never sees 24 V. */
		SENSOR,
		/** Its ends contradict each other dangerously: the supply here and the common there, or a sensor here and 24 V there. */
		CONTRADICTORY
	}

	/** @return whether it may be used */
	public Fitness fitness() {
		if (wire.condition().value().filter(c -> c != Wire.Condition.SOUND).isPresent()) {
			return Fitness.DAMAGED;
		} else if (wire.gauge().value().filter(g -> g.in(Unit.AWG) <= THICK_AWG).isPresent()) {
			return Fitness.THICK;
		} else if (touches(SENSOR)) {
			return isOnSensorsOnly() ? Fitness.SENSOR : Fitness.CONTRADICTORY;
		}
		return touches(HOT) && touches(Set.of(TerminalMark.C)) ? Fitness.CONTRADICTORY : Fitness.FIT;
	}

	private boolean isOnSensorsOnly() {
		return Stream.of(control(), equipment()).flatMap(Optional::stream).allMatch(end -> SENSOR.contains(end) || NO_VOLTAGE.contains(end));
	}

	/** @return whether one of its ends is known to be on one of {@code marks} */
	public boolean touches(Set<TerminalMark> marks) {
		return control().filter(marks::contains).isPresent() || equipment().filter(marks::contains).isPresent();
	}

	/** @return where it was landed on the old control */
	public Optional<TerminalMark> control() {
		return wire.atControl().value();
	}

	/** @return where its other end is landed */
	public Optional<TerminalMark> equipment() {
		return wire.atEquipment().value();
	}

	/** @return whether it is known to be landed nowhere */
	public boolean isSpare() {
		return Stream.of(control(), equipment()).allMatch(end -> end.filter(m -> m == TerminalMark.NOT_LANDED).isPresent());
	}

	/** @return its colour, or "conductor of unknown colour" */
	public String label() {
		return wire.colour().value().map(Wire.Colour::label).orElse("conductor of unknown colour");
	}

	private static <E extends Enum<E>> int rank(Answer<E> answer) {
		return answer.value().map(Enum::ordinal).orElse(Integer.MAX_VALUE);
	}

	private static double number(Answer<Quantity> answer) {
		return answer.map(Quantity::base).value().orElse(Double.MAX_VALUE);
	}
}
