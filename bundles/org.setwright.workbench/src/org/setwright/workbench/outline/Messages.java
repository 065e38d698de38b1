package org.setwright.workbench.outline;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String OutlineLine_says;
	public static String OutlineLine_unnamed;
	public static String RuleOutline_name;

	static {
		NLS.initializeMessages("org.setwright.workbench.outline.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
