package org.setwright.workbench.fitness;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CoverageJob_name;
	public static String FitnessView_lacking;
	public static String FitnessView_mistakes;
	public static String FitnessView_noBook;
	public static String FitnessView_reading;
	public static String FitnessView_rules;
	public static String FitnessView_search;
	public static String FitnessView_settings;
	public static String FitnessView_stopped;
	public static String MistakeLines_all;
	public static String MistakeLines_by;
	public static String MistakeLines_mistake;
	public static String MistakeLines_nobody;
	public static String MistakeLines_notFound;
	public static String MistakeLines_noticed;
	public static String MistakeLines_saved;
	public static String MistakeLines_some;
	public static String MistakeLines_sort;
	public static String MistakeLines_where;
	public static String MistakesTab_bar;
	public static String MistakesTab_changed;
	public static String MistakesTab_far;
	public static String MistakesTab_left;
	public static String MistakesTab_list;
	public static String MistakesTab_look;
	public static String MistakesTab_looking;
	public static String MistakesTab_make;
	public static String MistakesTab_making;
	public static String MistakesTab_more;
	public static String MistakesTab_notSaved;
	public static String MistakesTab_nothing;
	public static String MistakesTab_outdated;
	public static String MistakesTab_save;
	public static String MistakesTab_saved;
	public static String MistakesTab_stop;
	public static String MistakesTab_stopped;
	public static String MistakesTab_summary;
	public static String RuleLines_bothWays;
	public static String RuleLines_decided;
	public static String RuleLines_neverDecided;
	public static String RuleLines_neverFailed;
	public static String RuleLines_neverHeld;
	public static String RuleLines_neverSeen;
	public static String RuleLines_neverSpoke;
	public static String RuleLines_oneWay;
	public static String RuleLines_open;
	public static String RuleLines_outranked;
	public static String RuleLines_rule;
	public static String RuleLines_silent;
	public static String RuleLines_spoke;
	public static String RuleLines_standing;
	public static String RuleLines_triedOut;
	public static String RuleLines_where;
	public static String SettingLines_jobs;
	public static String SettingLines_never;
	public static String SettingLines_nothing;
	public static String SettingLines_open;
	public static String SettingLines_seen;
	public static String SettingLines_setting;
	public static String SettingLines_someNever;
	public static String SettingLines_standing;
	public static String SettingLines_values;
	public static String StrengthJob_fault;

	static {
		NLS.initializeMessages("org.setwright.workbench.fitness.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
