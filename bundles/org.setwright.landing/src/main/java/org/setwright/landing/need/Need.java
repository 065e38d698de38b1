package org.setwright.landing.need;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.setwright.trade.catalogue.Setting;
import org.setwright.trade.wiring.TerminalMark;

/**
 * One conductor a job needs.
 *
 * @param part which conductor of those the duty takes, from 1
 * @param of how many conductors the duty takes: 1, or 2 for a pair that is useless by halves
 * @param because why, a sentence
 * @param source the rule and document behind it, or "common practice"
 * @param restsOn the settled settings it follows from
 * @param heldOpenBy the settings nobody has settled that could change it; then it is only perhaps needed
 * @param checks what to make sure of before it is landed
 */
public record Need(Duty duty, int part, int of, Strength strength, String because, String source, List<Setting> restsOn,
		List<Setting> heldOpenBy, List<Check> checks) {
	/** The most important first; among those of one duty the first part. */
	public static final Comparator<Need> ORDER = Comparator.comparing(Need::duty).thenComparing(Need::part);

	/** How much it is needed. */
	public enum Strength {
		/** The job needs it. */
		NEEDED,
		/** A setting that is still open decides. */
		OPEN,
		/** It is worth a conductor that is free, and nothing more. */
		WANTED
	}

	public Need {
		restsOn = List.copyOf(restsOn);
		heldOpenBy = List.copyOf(heldOpenBy);
		checks = List.copyOf(checks);
	}

	/** @return a single conductor by common practice */
	static Need of(Duty duty, Strength strength, String because) {
		return new Need(duty, 1, 1, strength, because, SetUp.COMMON_PRACTICE, List.of(), List.of(), List.of());
	}

	/** @return what leaving it without a conductor weighs: what is only perhaps needed never takes one from what is */
	public int weight() {
		return switch (strength) {
			case NEEDED -> duty.importance();
			case OPEN -> Math.max(11, duty.importance() / 40);
			case WANTED -> 10;
		};
	}

	/** @return for people: "humidifier, conductor 2 of 2" */
	public String label() {
		return duty.label() + (of == 1 ? "" : ", conductor " + part + " of " + of);
	}

	/** @return the controller terminals that do it, the usual one first; of a sensor pair each conductor has its own */
	public List<TerminalMark> atWall() {
		return ownMark(duty.atWall());
	}

	/** @return the equipment terminals that do it, the usual one first; of a sensor pair each conductor has its own */
	public List<TerminalMark> atEquipment() {
		return ownMark(duty.atEquipment());
	}

	private List<TerminalMark> ownMark(List<TerminalMark> marks) {
		return duty.isSensor() ? List.of(marks.get(part - 1)) : marks;
	}

	/** @return one need for each conductor of a pair, or itself alone */
	List<Need> parts(int conductors) {
		List<Need> parts = new ArrayList<>();
		for (int i = 1; i <= conductors; i++) {
			parts.add(new Need(duty, i, conductors, strength, because, source, restsOn, heldOpenBy, checks));
		}
		return parts;
	}

	Need restingOn(Setting setting, String itsSource) {
		return new Need(duty, part, of, strength, because, itsSource, added(restsOn, setting), heldOpenBy, checks);
	}

	Need heldOpenBy(Setting setting) {
		return new Need(duty, part, of, strength, because, source, restsOn, added(heldOpenBy, setting), checks);
	}

	Need checking(Check check) {
		return new Need(duty, part, of, strength, because, source, restsOn, heldOpenBy, added(checks, check));
	}

	private static <T> List<T> added(List<T> list, T one) {
		List<T> more = new ArrayList<>(list);
		more.add(one);
		return more;
	}
}
