package org.setwright.workbench.setup;

import org.eclipse.jface.viewers.IElementComparer;
import org.setwright.workbench.setup.SettingRows.Group;

/** Holds two rows for the same when they show the same setting, so that a selection outlives new results. */
final class SameSetting implements IElementComparer {

	@Override
	public boolean equals(Object a, Object b) {
		return key(a).equals(key(b));
	}

	@Override
	public int hashCode(Object element) {
		return key(element).hashCode();
	}

	private static Object key(Object element) {
		if (element instanceof SettingRow row) {
			return row.setting();
		}
		return element instanceof Group group ? group.heading() : element;
	}
}
