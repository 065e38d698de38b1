package org.setwright.check;

/** Somebody who watches long work and may end it. Called from several threads at once. */
public interface Progress {
	/** Watches nothing and ends nothing. */
	Progress UNWATCHED = new Progress() {
		@Override
		public void done(int done, int all) {
			// nobody watches
		}

		@Override
		public boolean cancelled() {
			return false;
		}
	};

	/** Told now and then. @param done pieces of work, from 0 to {@code all}; seldom out of order */
	void done(int done, int all);

	/** @return whether the work is to end as soon as it can, without a result */
	boolean cancelled();
}
