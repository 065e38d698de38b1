package org.setwright.command.terminal;

import org.setwright.check.Progress;

/** How far long work is, on one line of a terminal that is written over. Shows nothing where nobody watches. */
public final class ProgressLine implements Progress {
	private static final int SHARES = 50;
	private final Surroundings at;
	private final String what;
	private int shown = -1;

	/** @param what the pieces of work are, in the plural */
	public ProgressLine(Surroundings at, String what) {
		this.at = at;
		this.what = what;
	}

	@Override
	public synchronized void done(int done, int all) {
		int share = all == 0 ? SHARES : done * SHARES / all;
		if (at.watched() && share > shown) {
			shown = share;
			at.err().print("\r" + done + " of " + all + " " + what);
			at.err().flush();
		}
	}

	/** A terminal ends the whole program when it is interrupted. */
	@Override
	public boolean cancelled() {
		return false;
	}

	/** Takes the line away again. */
	public void finished() {
		if (shown >= 0) {
			at.err().print("\r" + " ".repeat(at.columns() - 1) + "\r");
			at.err().flush();
		}
	}
}
