package org.setwright.workbench.reasons;

import java.util.List;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** The outline of reasons, root included. */
final class ReasonContents implements ITreeContentProvider {

	@Override
	public Object[] getElements(Object roots) {
		return ((List<?>) roots).toArray();
	}

	@Override
	public Object[] getChildren(Object node) {
		return ((ReasonNode) node).children().toArray();
	}

	@Override
	public Object getParent(Object node) {
		return null;
	}

	@Override
	public boolean hasChildren(Object node) {
		return !((ReasonNode) node).children().isEmpty();
	}
}
