package org.setwright.workbench.counts;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String CountMargin_unspoken;
	public static String JobsOfRule_hint;
	public static String JobsOfRule_name;
	public static String JobsOfRule_noRule;
	public static String TallyWords_disputed;
	public static String TallyWords_disputedOnOne;
	public static String TallyWords_headDisputed;
	public static String TallyWords_headHeldOpen;
	public static String TallyWords_headOutranked;
	public static String TallyWords_headSilent;
	public static String TallyWords_headStands;
	public static String TallyWords_heldOpen;
	public static String TallyWords_heldOpenOnOne;
	public static String TallyWords_never;
	public static String TallyWords_outranked;
	public static String TallyWords_outrankedOnOne;
	public static String TallyWords_silent;
	public static String TallyWords_silentOnOne;
	public static String TallyWords_staleBook;
	public static String TallyWords_staleRule;
	public static String TallyWords_stands;
	public static String TallyWords_standsOnOne;
	public static String TallyWords_unspoken;

	static {
		NLS.initializeMessages("org.setwright.workbench.counts.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
