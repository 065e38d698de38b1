package org.setwright.workbench.bench;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String BenchActions_clear;
	public static String BenchActions_clearHelp;
	public static String BenchActions_keep;
	public static String BenchActions_keepExpectation;
	public static String BenchActions_keepExpectations;
	public static String BenchActions_keepHelp;
	public static String BenchActions_keepJob;
	public static String BenchActions_keepJobAs;
	public static String BenchActions_keepRule;
	public static String BenchActions_redo;
	public static String BenchActions_redoHelp;
	public static String BenchActions_replay;
	public static String BenchActions_replayHelp;
	public static String BenchActions_save;
	public static String BenchActions_saveHelp;
	public static String BenchActions_stop;
	public static String BenchActions_stopHelp;
	public static String BenchActions_undo;
	public static String BenchActions_undoHelp;
	public static String BenchView_hint;
	public static String BenchView_mistakes;
	public static String BenchView_mistakesSince;
	public static String BenchWork_fault;
	public static String BenchWork_name;
	public static String BenchWork_nothing;
	public static String Kept_failed;
	public static String Kept_unsaved;
	public static String LineCompletion_nothing;
	public static String LineCompletion_status;
	public static String LineInput_name;
	public static String SaidPane_name;
	public static String Scripts_noName;
	public static String Scripts_replay;
	public static String Scripts_replaying;
	public static String Scripts_save;
	public static String Scripts_saved;
	public static String Scripts_there;
	public static String Scripts_unreadable;
	public static String Scripts_unwritable;
	public static String Told_column;
	public static String Told_lineAndColumn;
	public static String Told_misread;
	public static String Told_where;

	static {
		NLS.initializeMessages("org.setwright.workbench.bench.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
