package org.setwright.workbench.jobform;

import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.jobform.FormNode.Page;

/** What the pages of the form may ask of it. */
interface FormDesk {
	/** Makes an edit; says why when it cannot be made. */
	void edit(JobEdit edit);

	/** Says something about the field with the cursor, or about a mistake in it. @param mistake whether it is one */
	void say(String sentence, boolean mistake);

	/** @return in which units quantities are shown */
	UnitSystem units();

	/** Goes to another page. */
	void open(Page page);
}
