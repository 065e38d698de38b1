package org.setwright.workbench.startup;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CheckReasons_findOut;
	public static String CheckReasons_perhaps;
	public static String CheckReasons_rule;
	public static String Sheet_counted;
	public static String Sheet_findOut;
	public static String Sheet_ifNot;
	public static String Sheet_none;
	public static String Sheet_perhaps;
	public static String Sheet_perhapsNeeded;
	public static String Sheet_rule;
	public static String Sheet_see;
	public static String Sheet_stop;
	public static String Sheet_undecided;
	public static String Sheet_wait;
	public static String StartUpView_list;
	public static String StartUpView_noSetup;
	public static String StartUpView_openRule;
	public static String StartUpView_pickCheck;
	public static String StartUpView_reasons;
	public static String UnitsAction_both;
	public static String UnitsAction_ip;
	public static String UnitsAction_si;

	static {
		NLS.initializeMessages("org.setwright.workbench.startup.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
