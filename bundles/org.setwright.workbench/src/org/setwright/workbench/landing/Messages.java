package org.setwright.workbench.landing;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String LandingColumns_conductor;
	public static String LandingColumns_duty;
	public static String LandingColumns_equipment;
	public static String LandingColumns_wall;
	public static String LandingColumns_what;
	public static String LandingRows_between;
	public static String LandingRows_cautions;
	public static String LandingRows_conditional;
	public static String LandingRows_first;
	public static String LandingRows_heldOpen;
	public static String LandingRows_landed;
	public static String LandingRows_shared;
	public static String LandingRows_source;
	public static String LandingRows_stops;
	public static String LandingRows_toFindOut;
	public static String LandingRows_unserved;
	public static String LandingRows_unused;
	public static String LandingRows_with;
	public static String LandingView_counts;
	public static String LandingView_detail;
	public static String LandingView_list;
	public static String LandingView_noPlan;
	public static String LandingView_noSetup;
	public static String LandingView_pickJob;

	static {
		NLS.initializeMessages("org.setwright.workbench.landing.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
