package org.setwright.workbench.editions;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Control;

/** Does something that takes time only while a tab is to be seen, or as soon as it is. */
final class WhenSeen {
	private final CTabFolder tabs;
	private final CTabItem tab;
	private final Runnable does;
	private boolean due;

	/** Adds a tab. @param does what is put off */
	WhenSeen(CTabFolder tabs, String title, Control control, Runnable does) {
		this.tabs = tabs;
		this.does = does;
		tab = new CTabItem(tabs, SWT.NONE);
		tab.setText(title);
		tab.setControl(control);
		tabs.addListener(SWT.Selection, e -> look());
	}

	/** It has to be done. */
	void due() {
		due = true;
		look();
	}

	/** It has not to be done any more. */
	void notDue() {
		due = false;
	}

	/** @return whether the tab is the one that is shown */
	boolean seen() {
		return tabs.getSelection() == tab;
	}

	private void look() {
		if (due && seen()) {
			due = false;
			does.run();
		}
	}
}
