package org.setwright.workbench.rules;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String Completions_meaning;
	public static String RuleTemplates_unreadable;
	public static String WordMeaning_choice;
	public static String WordMeaning_field;
	public static String WordMeaning_kind;
	public static String WordMeaning_setting;

	static {
		NLS.initializeMessages("org.setwright.workbench.rules.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
