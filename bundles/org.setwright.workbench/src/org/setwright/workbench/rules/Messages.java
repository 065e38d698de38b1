package org.setwright.workbench.rules;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String Completions_meaning;
	public static String LanguageWords_and;
	public static String LanguageWords_authority;
	public static String LanguageWords_because;
	public static String LanguageWords_caution;
	public static String LanguageWords_end;
	public static String LanguageWords_exists;
	public static String LanguageWords_find;
	public static String LanguageWords_Finding;
	public static String LanguageWords_in;
	public static String LanguageWords_matches;
	public static String LanguageWords_NO;
	public static String LanguageWords_not;
	public static String LanguageWords_or;
	public static String LanguageWords_propose;
	public static String LanguageWords_rule;
	public static String LanguageWords_source;
	public static String LanguageWords_startUp;
	public static String LanguageWords_then;
	public static String LanguageWords_UNKNOWN;
	public static String LanguageWords_when;
	public static String LanguageWords_YES;
	public static String RuleTemplates_unreadable;

	static {
		NLS.initializeMessages("org.setwright.workbench.rules.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
