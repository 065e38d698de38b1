package org.setwright.workbench.desk;

/** Follows what is being looked at. */
@FunctionalInterface
public interface DeskListener {
	/** Called in the window's thread, after each change. */
	void deskChanged(DeskState before, DeskState now);
}
