package org.setwright.workbench.drafts;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String DraftKeeper_name;
	public static String DraftKeeper_notKept;
	public static String DraftOffer_later;
	public static String DraftOffer_notPutBack;
	public static String DraftOffer_putBack;
	public static String DraftOffer_question;
	public static String DraftOffer_throwAway;
	public static String DraftOffer_title;

	static {
		NLS.initializeMessages("org.setwright.workbench.drafts.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
