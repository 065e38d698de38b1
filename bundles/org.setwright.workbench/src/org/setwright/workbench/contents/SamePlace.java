package org.setwright.workbench.contents;

import org.eclipse.jface.viewers.IElementComparer;

/** Holds two lines for the same when they show the same thing, so that what is unfolded stays so. */
final class SamePlace implements IElementComparer {

	@Override
	public boolean equals(Object a, Object b) {
		return key(a).equals(key(b));
	}

	@Override
	public int hashCode(Object element) {
		return key(element).hashCode();
	}

	private static Object key(Object element) {
		return element instanceof BookNode node ? node.at().file() + '\n' + (node.at().line() == 0 ? "" : node.text()) : element; //$NON-NLS-1$
	}
}
