package org.setwright.workbench.desk;

/** Follows what is being looked at. */
@FunctionalInterface
public interface DeskListener {
	/** Called in the window's thread, after each change. */
	void deskChanged(DeskState before, DeskState now);

	/** Called in the window's thread now and then while jobs are run. @param done so far @param all how many there are */
	default void jobsRun(int done, int all) {
		// most show only what has come of it
	}

	/** Called in the window's thread when somebody has ended the work before its end: what is shown stays as it was before. */
	default void workStopped() {
		// most go on showing what was
	}
}
