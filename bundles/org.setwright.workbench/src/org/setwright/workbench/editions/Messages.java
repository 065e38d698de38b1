package org.setwright.workbench.editions;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String ActButtons_keep;
	public static String ActButtons_putBackBook;
	public static String ActButtons_putBackRule;
	public static String Acts_begin;
	public static String Acts_changeFirst;
	public static String Acts_keep;
	public static String Acts_keepButton;
	public static String Acts_keepFiles;
	public static String Acts_keepHelp;
	public static String Acts_message;
	public static String Acts_nothing;
	public static String Acts_putBackBook;
	public static String Acts_putBackBookAsk;
	public static String Acts_putBackRule;
	public static String Acts_putBackRuleAsk;
	public static String Acts_saveFirst;
	public static String Acts_typed;
	public static String Asking_again;
	public static String Asking_fault;
	public static String BeginPage_begin;
	public static String ChangeRows_added;
	public static String ChangeRows_became;
	public static String ChangeRows_changed;
	public static String ChangeRows_files;
	public static String ChangeRows_jobs;
	public static String ChangeRows_removed;
	public static String ChangeRows_rules;
	public static String ChangeRows_what;
	public static String ChangeRows_where;
	public static String ChangesTab_list;
	public static String ChangesTab_none;
	public static String EditionLine_allKept;
	public static String EditionLine_inHand;
	public static String EditionLine_notKept;
	public static String EditionLine_notSigned;
	public static String EditionTable_name;
	public static String EditionTable_signed;
	public static String EditionTable_what;
	public static String EditionTable_when;
	public static String EditionTable_who;
	public static String EditionsView_changes;
	public static String EditionsView_comparing;
	public static String EditionsView_noBook;
	public static String EditionsView_noBookOpen;
	public static String EditionsView_noLine;
	public static String EditionsView_noRepository;
	public static String EditionsView_nothingPicked;
	public static String EditionsView_openFirst;
	public static String EditionsView_pickEdition;
	public static String EditionsView_pickRule;
	public static String EditionsView_reading;
	public static String EditionsView_summary;
	public static String EntryDialog_about;
	public static String EntryDialog_by;
	public static String EntryDialog_email;
	public static String EntryDialog_name;
	public static String EntryDialog_shown;
	public static String OpenEditions_begin;
	public static String OpenEditions_none;
	public static String SidePane_after;
	public static String SidePane_before;
	public static String SidePane_name;
	public static String SidePane_sign;
	public static String Sides_inHand;
	public static String Sides_nothing;
	public static String Sides_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.editions.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
