package org.setwright.workbench.aloud;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String ReadAloudView_lastGood;
	public static String ReadAloudView_none;
	public static String ReadAloudView_noRule;
	public static String ReadAloudView_text;

	static {
		NLS.initializeMessages("org.setwright.workbench.aloud.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
