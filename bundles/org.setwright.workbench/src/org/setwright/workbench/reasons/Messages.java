package org.setwright.workbench.reasons;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String ChangeSearch_checking;
	public static String ChangeSearch_name;
	public static String ChangeSearch_trying;
	public static String ChangeTab_noQuestion;
	public static String ChangeTab_outline;
	public static String ChangeTab_stop;
	public static String ChangeTab_title;
	public static String ChangeTree_alsoChanges;
	public static String ChangeTree_and;
	public static String ChangeTree_checkFirst;
	public static String ChangeTree_checkFirstExplained;
	public static String ChangeTree_ended;
	public static String ChangeTree_nothingMatters;
	public static String ChangeTree_nothingNeeded;
	public static String ChangeTree_onSite;
	public static String ChangeTree_onSiteExplained;
	public static String ChangeTree_otherJob;
	public static String ChangeTree_otherJobExplained;
	public static String ChangeTree_settings;
	public static String ChangeTree_tried;
	public static String ChangeTree_whatWould;
	public static String ChangeTree_wouldChange;
	public static String CompareTab_other;
	public static String CompareTab_outline;
	public static String CompareTab_pick;
	public static String CompareTab_title;
	public static String CompareTab_with;
	public static String CompareTree_here;
	public static String CompareTree_notNeeded;
	public static String CompareTree_same;
	public static String CompareTree_setting;
	public static String CompareTree_speaksToo;
	public static String CompareTree_there;
	public static String PictureCanvas_name;
	public static String PictureTab_title;
	public static String PictureWalk_restsOn;
	public static String QuestionRow_noSetting;
	public static String QuestionRow_pickRule;
	public static String QuestionRow_pickValue;
	public static String QuestionRow_rule;
	public static String QuestionRow_ruleName;
	public static String QuestionRow_setting;
	public static String QuestionRow_valueName;
	public static String Question_comesTo;
	public static String Question_speaks;
	public static String ReasonTree_always;
	public static String ReasonTree_calculated;
	public static String ReasonTree_disputed;
	public static String ReasonTree_disputedExplained;
	public static String ReasonTree_fact;
	public static String ReasonTree_foundBy;
	public static String ReasonTree_gap;
	public static String ReasonTree_gapExplained;
	public static String ReasonTree_heldOpen;
	public static String ReasonTree_notLookedUp;
	public static String ReasonTree_outranked;
	public static String ReasonTree_perhaps;
	public static String ReasonTree_perhapsExplained;
	public static String ReasonTree_proposes;
	public static String ReasonTree_ruleDetail;
	public static String ReasonTree_setting;
	public static String ReasonTree_settledExplained;
	public static String ReasonTree_settledSoFarExplained;
	public static String ReasonTree_silent;
	public static String ReasonTree_wanted;
	public static String ReasonTree_workedOut;
	public static String ReasonsView_copy;
	public static String ReasonsView_copyExplained;
	public static String ReasonsView_detail;
	public static String ReasonsView_noSetup;
	public static String ReasonsView_notNeeded;
	public static String ReasonsView_outline;
	public static String ReasonsView_pickSetting;
	public static String ReasonsView_tabs;
	public static String WhyNotTab_outline;
	public static String WhyNotTab_title;
	public static String WhyNotTree_heldBy;
	public static String WhyNotTree_nobody;
	public static String WhyNotTree_outrankedBy;
	public static String WhyNotTree_rule;
	public static String WhyNotTree_says;
	public static String WhyTab_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.reasons.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
