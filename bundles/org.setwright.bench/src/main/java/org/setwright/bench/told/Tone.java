package org.setwright.bench.told;

/** How a row stands out. Colour may follow it; the words say it too. */
public enum Tone {
	PLAIN, HEADING, QUIET, GOOD, ATTENTION, ALARM
}
