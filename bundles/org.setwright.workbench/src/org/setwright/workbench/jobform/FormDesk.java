package org.setwright.workbench.jobform;

import java.util.function.Supplier;
import org.eclipse.swt.widgets.Control;
import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.UnitSystem;
import org.setwright.workbench.jobform.FormNode.Page;
import org.setwright.writing.uses.Thing;

/** What the pages of the form may ask of it. */
interface FormDesk {
	/** Makes an edit; says why when it cannot be made. */
	void edit(JobEdit edit);

	/** Says something about the field with the cursor, or about a mistake in it. @param mistake whether it is one */
	void say(String sentence, boolean mistake);

	/**
	 * Has the words of the menus begin at {@code thing} while the cursor is in {@code field}; the menu of the question leads there.
	 *
	 * @param thing asked for when it is needed
	 */
	void about(Control question, Control field, Supplier<Thing> thing);

	/** @return in which units quantities are shown */
	UnitSystem units();

	/** Goes to another page. */
	void open(Page page);
}
