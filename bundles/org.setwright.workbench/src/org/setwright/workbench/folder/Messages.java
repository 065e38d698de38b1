package org.setwright.workbench.folder;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String FolderChanges_name;
	public static String OpenBookHandler_message;
	public static String OpenBookHandler_notABook;
	public static String OpenBookHandler_title;
	public static String OpenBook_cannotOpen;
	public static String OpenBook_importStuck;
	public static String OpenBook_name;
	public static String Places_cannotOpen;
	public static String Places_gone;
	public static String ProblemMarkers_message;
	public static String ProblemMarkers_name;

	static {
		NLS.initializeMessages("org.setwright.workbench.folder.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
