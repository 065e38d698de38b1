package org.setwright.workbench.reasons;

import org.eclipse.swt.widgets.Control;
import org.setwright.workbench.desk.DeskState;

/** One of the questions the view answers. */
interface Tab {
	/** @return what stands on the tab */
	String title();

	/** @return what is shown */
	Control control();

	/** Shows the answer. Called only while it is in front. */
	void show(DeskState now);

	/** @return the answer as text */
	String text();

	/** Takes the keyboard. */
	void setFocus();
}
