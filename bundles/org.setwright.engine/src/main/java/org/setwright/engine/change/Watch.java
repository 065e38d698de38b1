package org.setwright.engine.change;

/** Follows a search while it goes on, and can end it. */
@FunctionalInterface
public interface Watch {
	/** Lets every search run to its end. */
	Watch PATIENT = changes -> true;

	/**
	 * Asked again and again.
	 *
	 * @param changes how many changes at once are being tried now
	 * @return whether to go on
	 */
	boolean goOn(int changes);
}
