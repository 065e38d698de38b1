package org.setwright.workbench.tables;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CellEditing_spoken;
	public static String GridButtons_add;
	public static String GridButtons_addExplained;
	public static String GridButtons_down;
	public static String GridButtons_downExplained;
	public static String GridButtons_fill;
	public static String GridButtons_fillExplained;
	public static String GridButtons_keep;
	public static String GridButtons_keepExplained;
	public static String GridButtons_remove;
	public static String GridButtons_removeExplained;
	public static String GridButtons_up;
	public static String GridButtons_upExplained;
	public static String GridPage_notSound;
	public static String GridPage_hint;
	public static String GridTable_marks;
	public static String GridTable_marksExplained;
	public static String GridTable_name;
	public static String NoteList_name;
	public static String RowMarks_agrees;
	public static String RowMarks_dispute;
	public static String RowMarks_hole;
	public static String RowMarks_outranked;
	public static String RowMarks_problem;
	public static String SpokenCell_cell;
	public static String SpokenCell_empty;
	public static String SpokenCell_nothing;
	public static String SpokenCell_row;
	public static String TableEditor_grid;
	public static String TableEditor_notSaved;

	static {
		NLS.initializeMessages("org.setwright.workbench.tables.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
