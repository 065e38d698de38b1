package org.setwright.workbench.landing;

import java.util.Optional;
import org.setwright.trade.wiring.Wire;

/**
 * One line of the landing list.
 *
 * @param key what it is about, the same after a new result, so that a selection outlives it
 * @param conductor its colour and gauge, or what stands in their place
 * @param colour the colour to show beside it; empty when there is none to show
 * @param wire which of the job's wires it is, from 0; empty for lines that are about no wire
 * @param duty what it is for
 * @param wall what to do at the wall
 * @param equipment what to do at the equipment
 * @param what what to do, in a word or a sentence
 * @param mark whether it can be done as it stands
 * @param detail why, what to make sure of, and the source
 */
record LandingRow(String key, String conductor, Optional<Wire.Colour> colour, Optional<Integer> wire, String duty, String wall, String equipment,
		String what, Mark mark, String detail) {
	/** Whether a line can be done as it stands. */
	enum Mark {
		/** It can. */
		SETTLED,
		/** Something has to be checked or settled first. */
		SETTLED_SO_FAR,
		/** It is not possible. */
		GAP,
		/** Nothing is to be landed. */
		NOT_NEEDED,
		/** It forbids everything. */
		STOP,
		/** Somebody has to look. */
		UNKNOWN,
		/** To be heeded, by the kind of caution. */
		DANGER, LICENSED_WORK, CHECK_AT_START_UP, NOTE
	}
}
