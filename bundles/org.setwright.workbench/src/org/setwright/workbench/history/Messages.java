package org.setwright.workbench.history;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CheckPage_again;
	public static String CheckPage_ended;
	public static String CheckPage_failed;
	public static String CheckPage_faults;
	public static String CheckPage_fine;
	public static String CheckPage_manyFaults;
	public static String CheckPage_message;
	public static String CheckPage_title;
	public static String ColumnsPage_between;
	public static String ColumnsPage_columns;
	public static String ColumnsPage_examples;
	public static String ColumnsPage_heading;
	public static String ColumnsPage_load;
	public static String ColumnsPage_means;
	public static String ColumnsPage_message;
	public static String ColumnsPage_notRead;
	public static String ColumnsPage_notSaved;
	public static String ColumnsPage_save;
	public static String ColumnsPage_saved;
	public static String ColumnsPage_title;
	public static String ColumnsPage_unit;
	public static String Columns_near;
	public static String Columns_noJob;
	public static String Columns_twice;
	public static String Columns_unknown;
	public static String ExportPage_ended;
	public static String ExportPage_faults;
	public static String ExportPage_message;
	public static String ExportPage_noFolder;
	public static String ExportPage_replaces;
	public static String ExportPage_title;
	public static String ExportWizard_exporting;
	public static String ExportWizard_failed;
	public static String ExportWizard_title;
	public static String FaultTable_column;
	public static String FaultTable_name;
	public static String FaultTable_remedy;
	public static String FaultTable_row;
	public static String FaultTable_what;
	public static String FilePage_browse;
	public static String FilePage_browseFolder;
	public static String FilePage_elsewhere;
	public static String FilePage_file;
	public static String FilePage_first;
	public static String FilePage_message;
	public static String FilePage_noFile;
	public static String FilePage_title;
	public static String ImportHandler_done;
	public static String ImportHandler_noBook;
	public static String ImportPlan_checking;
	public static String ImportPlan_importing;
	public static String ImportPlan_tooMany;
	public static String ImportPlan_tooManyRemedy;
	public static String ImportWizard_cutOff;
	public static String ImportWizard_failed;
	public static String ImportWizard_title;
	public static String MeaningPane_allowed;
	public static String MeaningPane_heading;
	public static String MeaningPane_means;
	public static String MeaningPane_unit;
	public static String MeaningPane_unknown;
	public static String WordTable_fine;
	public static String WordTable_means;
	public static String WordTable_name;
	public static String WordTable_state;
	public static String WordTable_written;

	static {
		NLS.initializeMessages("org.setwright.workbench.history.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
