package org.setwright.engine.logic;

/** Kleene's three truth values. */
public enum Truth {
	FALSE, UNKNOWN, TRUE;

	/** @return the weaker of the two: both must hold */
	public Truth and(Truth other) {
		return compareTo(other) < 0 ? this : other;
	}

	/** @return the stronger of the two: one is enough */
	public Truth or(Truth other) {
		return compareTo(other) > 0 ? this : other;
	}

	/** @return the opposite; unknown stays unknown */
	public Truth not() {
		return this == TRUE ? FALSE : this == FALSE ? TRUE : UNKNOWN;
	}

	/** @return the truth value of something that is certain */
	public static Truth of(boolean holds) {
		return holds ? TRUE : FALSE;
	}
}
