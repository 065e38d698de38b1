package org.setwright.command.asking;

import java.util.function.BooleanSupplier;

/** Ends a search that takes longer than somebody at a terminal waits. */
final class Patience implements BooleanSupplier {
	private static final long SECONDS = 8;
	private final long until = System.nanoTime() + SECONDS * 1_000_000_000L;
	private boolean ended;

	@Override
	public boolean getAsBoolean() {
		ended |= System.nanoTime() > until;
		return ended;
	}

	/** @return whether the search ran to its end */
	boolean lasted() {
		return !ended;
	}
}
