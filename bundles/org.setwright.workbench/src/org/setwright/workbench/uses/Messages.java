package org.setwright.workbench.uses;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String FromHandler_nowhere;
	public static String MentionLinks_from;
	public static String MentionList_from;
	public static String MentionList_hint;
	public static String MentionList_line;
	public static String MentionList_name;
	public static String RenameEverywhere_done;
	public static String RenameEverywhere_job;
	public static String RenameEverywhere_name;
	public static String RenameWizard_hint;
	public static String RenameWizard_name;
	public static String Sentence_title;
	public static String ThingWords_field;
	public static String ThingWords_line;
	public static String ThingWords_setting;
	public static String UsesHandler_nothing;
	public static String UsesHandler_title;
	public static String UseWords_authority;
	public static String UseWords_choice;
	public static String UseWords_comesTo;
	public static String UseWords_fact;
	public static String UseWords_finding;
	public static String UseWords_found;
	public static String UseWords_rule;
	public static String UseWords_setting;
	public static String UseWords_settingChoice;
	public static String UseWords_speaks;
	public static String UseWords_value;
	public static String UseWords_word;

	static {
		NLS.initializeMessages("org.setwright.workbench.uses.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
