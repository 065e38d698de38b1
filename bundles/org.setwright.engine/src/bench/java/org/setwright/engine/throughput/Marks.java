package org.setwright.engine.throughput;

import java.util.BitSet;

/** Where plain Drools rules note that they fired. Public because compiled rules call it. */
public final class Marks {
	private final BitSet fired = new BitSet();
	private final BitSet found = new BitSet();

	/** Notes that the rule with this number fired. */
	public void fired(int rule) {
		fired.set(rule);
	}

	/** @return whether the finding with this number is made for the first time */
	public boolean first(int finding) {
		boolean first = !found.get(finding);
		found.set(finding);
		return first;
	}

	BitSet all() {
		return fired;
	}
}
