package org.setwright.workbench.welcome;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CopyStarterDialog_browse;
	public static String CopyStarterDialog_choosePlace;
	public static String CopyStarterDialog_copy;
	public static String CopyStarterDialog_defaultName;
	public static String CopyStarterDialog_name;
	public static String CopyStarterDialog_noName;
	public static String CopyStarterDialog_noPlace;
	public static String CopyStarterDialog_place;
	public static String CopyStarterDialog_taken;
	public static String CopyStarterDialog_title;
	public static String CopyStarterDialog_willMake;
	public static String CopyStarterDialog_window;
	public static String CopyStarterHandler_failed;
	public static String WelcomePage_open;
	public static String WelcomePage_openMeans;
	public static String WelcomePage_purpose;
	public static String WelcomePage_recent;
	public static String WelcomePage_starter;
	public static String WelcomePage_starterMeans;
	public static String WelcomePage_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.welcome.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
