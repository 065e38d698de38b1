package org.setwright.workbench.reasons;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String ReasonTree_calculated;
	public static String ReasonTree_disputed;
	public static String ReasonTree_disputedExplained;
	public static String ReasonTree_fact;
	public static String ReasonTree_foundBy;
	public static String ReasonTree_gap;
	public static String ReasonTree_gapExplained;
	public static String ReasonTree_heldOpen;
	public static String ReasonTree_none;
	public static String ReasonTree_notLookedUp;
	public static String ReasonTree_outranked;
	public static String ReasonTree_perhaps;
	public static String ReasonTree_perhapsExplained;
	public static String ReasonTree_proposes;
	public static String ReasonTree_ruleDetail;
	public static String ReasonTree_setting;
	public static String ReasonTree_settledExplained;
	public static String ReasonTree_settledSoFarExplained;
	public static String ReasonTree_unknown;
	public static String ReasonTree_wanted;
	public static String ReasonTree_yes;
	public static String ReasonsView_detail;
	public static String ReasonsView_noSetup;
	public static String ReasonsView_notNeeded;
	public static String ReasonsView_outline;
	public static String ReasonsView_pickSetting;

	static {
		NLS.initializeMessages("org.setwright.workbench.reasons.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
