package org.setwright.workbench.editions;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.setwright.editions.EditionsOf;
import org.setwright.editions.kept.NotDone;
import org.setwright.editions.kept.Who;

/** Who works here. @param who as Git is told to call them, or else as they wrote it in this window the last time @param known whether Git was told */
record Author(Who who, boolean known) {
	private static final String NODE = "org.setwright.workbench"; //$NON-NLS-1$
	private static final String NAME = "authorName"; //$NON-NLS-1$
	private static final String EMAIL = "authorEmail"; //$NON-NLS-1$

	static Author of(EditionsOf editions) {
		try {
			return new Author(editions.repo().user(), true);
		} catch (NotDone gitWasNotTold) {
			IEclipsePreferences notes = InstanceScope.INSTANCE.getNode(NODE);
			return new Author(new Who(notes.get(NAME, ""), notes.get(EMAIL, "")), false); //$NON-NLS-1$ //$NON-NLS-2$
		}
	}

	/** Offers {@code who} the next time Git does not know. */
	static void remember(Who who) {
		IEclipsePreferences notes = InstanceScope.INSTANCE.getNode(NODE);
		notes.put(NAME, who.name());
		notes.put(EMAIL, who.email());
	}
}
