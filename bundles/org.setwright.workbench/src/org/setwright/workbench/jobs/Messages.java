package org.setwright.workbench.jobs;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String JobColumns_job;
	public static String JobColumns_settings;
	public static String JobColumns_standing;
	public static String JobRows_asExpected;
	public static String JobRows_differs;
	public static String JobRows_mistakeInFile;
	public static String JobRows_mistakeInRules;
	public static String JobRows_notRun;
	public static String JobRows_nothingExpected;
	public static String JobRows_settled;
	public static String JobRows_settledAndOpen;
	public static String JobsView_list;
	public static String JobsView_noBook;
	public static String JobsView_reading;
	public static String JobsView_search;
	public static String JobsView_summary;
	public static String NewJobHandler_failed;
	public static String NewJobHandler_message;
	public static String NewJobHandler_noName;
	public static String NewJobHandler_taken;
	public static String NewJobHandler_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.jobs.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
