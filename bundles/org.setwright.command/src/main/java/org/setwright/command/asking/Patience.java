package org.setwright.command.asking;

import org.setwright.engine.change.Watch;

/** Ends a search that takes longer than somebody at a terminal waits. */
final class Patience implements Watch {
	private static final long SECONDS = 8;
	private final long until = System.nanoTime() + SECONDS * 1_000_000_000L;

	@Override
	public boolean goOn(int changes) {
		return System.nanoTime() < until;
	}
}
