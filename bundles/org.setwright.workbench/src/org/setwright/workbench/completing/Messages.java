package org.setwright.workbench.completing;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String OfferedWords_action;

	static {
		NLS.initializeMessages("org.setwright.workbench.completing.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
