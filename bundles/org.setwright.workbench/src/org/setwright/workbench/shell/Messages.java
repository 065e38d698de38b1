package org.setwright.workbench.shell;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String StatusWords_allAsExpected;
	public static String StatusWords_counts;
	public static String StatusWords_differing;
	public static String StatusWords_reading;
	public static String StatusWords_stopped;
	public static String WindowAdvisor_title;
	public static String WindowAdvisor_titleOfBook;

	static {
		NLS.initializeMessages("org.setwright.workbench.shell.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
