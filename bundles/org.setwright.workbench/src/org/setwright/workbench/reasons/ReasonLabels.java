package org.setwright.workbench.reasons;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Written;

/** The lines of the outline of reasons. */
final class ReasonLabels extends DelegatingStyledCellLabelProvider {

	ReasonLabels() {
		super(new Lines());
	}

	/** Sign, text and remark of each line. */
	private static final class Lines extends LabelProvider implements IStyledLabelProvider {
		@Override
		public StyledString getStyledText(Object node) {
			return Written.line(((ReasonNode) node).text(), ((ReasonNode) node).remark());
		}

		@Override
		public Image getImage(Object node) {
			return Icon.of(((ReasonNode) node).sign()).image();
		}
	}
}
