package org.setwright.workbench.fixes;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String FixDone_notDone;

	static {
		NLS.initializeMessages("org.setwright.workbench.fixes.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
