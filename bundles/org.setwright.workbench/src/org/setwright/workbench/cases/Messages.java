package org.setwright.workbench.cases;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String AcceptAction_help;
	public static String AcceptAction_text;
	public static String AcceptDialog_accept;
	public static String AcceptDialog_change;
	public static String AcceptDialog_changes;
	public static String AcceptDialog_message;
	public static String AcceptDialog_name;
	public static String AcceptDialog_reason;
	public static String AcceptDialog_title;
	public static String CaseColumns_allMet;
	public static String CaseColumns_came;
	public static String CaseColumns_expected;
	public static String CaseColumns_met;
	public static String CaseColumns_notAsked;
	public static String CaseColumns_notMet;
	public static String CaseColumns_rule;
	public static String CaseColumns_someNotMet;
	public static String CaseColumns_standing;
	public static String CaseColumns_what;
	public static String CaseList_name;
	public static String CasesView_changed;
	public static String CasesView_changedHelp;
	public static String CasesView_filter;
	public static String CasesView_noBook;
	public static String CasesView_reading;
	public static String CasesView_runAll;
	public static String CasesView_runPicked;
	public static String CasesView_running;
	public static String CasesView_search;
	public static String CasesView_someNotRun;
	public static String CasesView_stop;
	public static String CasesView_stopped;
	public static String CasesView_summary;
	public static String Checks_mistakes;
	public static String Checks_notRun;
	public static String DifferencePane_came;
	public static String DifferencePane_expected;
	public static String DifferencePane_nothing;
	public static String DifferencePane_pick;
	public static String DifferencePane_reasons;
	public static String RunAgain_name;

	static {
		NLS.initializeMessages("org.setwright.workbench.cases.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
