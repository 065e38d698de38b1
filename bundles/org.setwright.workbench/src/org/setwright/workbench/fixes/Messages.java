package org.setwright.workbench.fixes;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String FixDone_notDone;
	public static String NewFile_name;
	public static String NewFile_there;
	public static String NewSettingHandler_noBook;
	public static String SettingDialog_add;
	public static String SettingDialog_always;
	public static String SettingDialog_conditions;
	public static String SettingDialog_conditionsHint;
	public static String SettingDialog_group;
	public static String SettingDialog_meaning;
	public static String SettingDialog_message;
	public static String SettingDialog_name;
	public static String SettingDialog_needed;
	public static String SettingDialog_noMeaning;
	public static String SettingDialog_noName;
	public static String SettingDialog_noValues;
	public static String SettingDialog_onlyProposed;
	public static String SettingDialog_title;
	public static String SettingDialog_values;
	public static String SettingDialog_valuesHint;
	public static String SettingDialog_where;

	static {
		NLS.initializeMessages("org.setwright.workbench.fixes.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
