package org.setwright.workbench.look;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String WholeLine_hint;
	public static String WholeLine_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.look.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
