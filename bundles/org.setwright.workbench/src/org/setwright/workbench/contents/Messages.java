package org.setwright.workbench.contents;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String BookTree_mistakes;
	public static String BookTree_oneRule;
	public static String BookTree_ownSettings;
	public static String BookTree_rules;
	public static String ContentsView_search;
	public static String ContentsView_tree;
	public static String RuleUse_jobs;
	public static String RuleUse_oneJob;
	public static String RuleUse_silent;

	static {
		NLS.initializeMessages("org.setwright.workbench.contents.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
