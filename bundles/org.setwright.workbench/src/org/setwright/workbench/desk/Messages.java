package org.setwright.workbench.desk;

import org.eclipse.osgi.util.NLS;

/** The words of this package. */
final class Messages extends NLS {
	public static String EvaluationJob_fault;
	public static String EvaluationJob_name;
	public static String Evaluator_disagreed;
	public static String TallyJob_fault;
	public static String TallyJob_name;

	static {
		NLS.initializeMessages("org.setwright.workbench.desk.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
