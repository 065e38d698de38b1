package org.setwright.workbench.look;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** What a screen reader says of a control that has no label of its own. */
public final class Spoken {
	/** Under this key a control knows its name. */
	public static final String KEY = Spoken.class.getName();

	private Spoken() {
	}

	/** Has {@code control} called {@code name}; tests find it by that name, too. */
	public static void as(Control control, String name) {
		control.setData(KEY, name);
		control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = name;
			}
		});
	}
}
