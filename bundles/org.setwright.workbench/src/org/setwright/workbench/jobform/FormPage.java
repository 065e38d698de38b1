package org.setwright.workbench.jobform;

import org.setwright.book.JobCase;
import org.setwright.trade.catalogue.JobField;

/** One page of the form. */
interface FormPage {
	/** Shows what the job says now. */
	void show(JobCase job);

	/** Puts the cursor into the control that asks {@code field}, if there is one here. */
	void focus(JobField field);
}
