package org.setwright.workbench.setup;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CautionList_name;
	public static String CautionList_rule;
	public static String FindOutList_heading;
	public static String FindOutList_name;
	public static String FindOutList_none;
	public static String FindOutList_settings;
	public static String FindOutList_unknown;
	public static String FindOutList_warning;
	public static String Headline_between;
	public static String Headline_disputed;
	public static String Headline_fromBefore;
	public static String Headline_gaps;
	public static String Headline_jobFaulty;
	public static String Headline_noBook;
	public static String Headline_noJob;
	public static String Headline_nothing;
	public static String Headline_perhaps;
	public static String Headline_pickJob;
	public static String Headline_reading;
	public static String Headline_rulesFaulty;
	public static String Headline_settled;
	public static String SettingColumns_authority;
	public static String SettingColumns_expected;
	public static String SettingColumns_rule;
	public static String SettingColumns_setting;
	public static String SettingColumns_state;
	public static String SettingColumns_value;
	public static String SettingColumns_was;
	public static String SettingList_name;
	public static String SettingRows_and;
	public static String SettingRows_disputed;
	public static String SettingRows_gap;
	public static String SettingRows_notNeeded;
	public static String SettingRows_notNeededYet;
	public static String SettingRows_or;
	public static String SettingRows_outranks;
	public static String SettingRows_perhaps;
	public static String SettingRows_settled;
	public static String SettingRows_settledSoFar;
	public static String ShowAllAction_text;

	static {
		NLS.initializeMessages("org.setwright.workbench.setup.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
