package org.setwright.workbench.twopage;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
	public static String TwoPageEditor_text;

	static {
		NLS.initializeMessages("org.setwright.workbench.twopage.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
