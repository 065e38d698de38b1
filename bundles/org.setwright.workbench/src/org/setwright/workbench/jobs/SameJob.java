package org.setwright.workbench.jobs;

import org.eclipse.jface.viewers.IElementComparer;

/** Holds two rows for the same when they show the same job, so that a selection outlives new results. */
final class SameJob implements IElementComparer {

	@Override
	public boolean equals(Object a, Object b) {
		return a instanceof JobRow one && b instanceof JobRow other ? one.path().equals(other.path()) : a.equals(b);
	}

	@Override
	public int hashCode(Object element) {
		return element instanceof JobRow row ? row.path().hashCode() : element.hashCode();
	}
}
