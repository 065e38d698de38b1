package org.setwright.workbench.jobform;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String AboutPage_name;
	public static String AboutPage_nameHelp;
	public static String AboutPage_noName;
	public static String AboutPage_notes;
	public static String AboutPage_notesHelp;
	public static String ExpectPage_caution;
	public static String ExpectPage_finding;
	public static String ExpectPage_itemHelp;
	public static String ExpectPage_noFinding;
	public static String ExpectPage_noStartUp;
	public static String ExpectPage_perhapsStartUp;
	public static String ExpectPage_startUp;
	public static String ExpectPage_decidedBy;
	public static String ExpectPage_decidedByHelp;
	public static String ExpectPage_more;
	public static String ExpectPage_noCaution;
	public static String ExpectPage_spoken;
	public static String FactPage_help;
	public static String FactPage_spoken;
	public static String FactPage_unit;
	public static String FactPage_unknownSpoken;
	public static String FieldReading_refused;
	public static String FieldReading_unknown;
	public static String FormOutline_expected;
	public static String FormOutline_item;
	public static String FormOutline_itemNamed;
	public static String FormOutline_job;
	public static String FormOutline_known;
	public static String FormOutline_none;
	public static String FormOutline_unknown;
	public static String JobEditor_form;
	public static String JobForm_outline;
	public static String JobForm_unsound;
	public static String ListPage_add;
	public static String ListPage_empty;
	public static String ListPage_lastStays;
	public static String ListPage_remove;
	public static String ListPage_removeOne;
	public static String PageArea_about;
	public static String PageArea_expectations;
	public static String PresenceLine_any;
	public static String PresenceLine_help;
	public static String PresenceLine_none;
	public static String PresenceLine_one;
	public static String PresenceLine_present;
	public static String PresenceLine_unknown;
	public static String ShownUnits_ask;
	public static String ShownUnits_asWritten;
	public static String ShownUnits_explained;
	public static String ShownUnits_ip;
	public static String ShownUnits_si;
	public static String ShownUnits_spoken;
	public static String TextInput_asWritten;

	static {
		NLS.initializeMessages("org.setwright.workbench.jobform.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
