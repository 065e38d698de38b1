package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.jobform.FormNode.Page;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Written;
import org.setwright.workbench.rows.Branches;
import org.setwright.workbench.rows.SameBy;

/** Shows the outline of a form. */
final class FormOutlineViewer {
	private FormOutlineViewer() {
	}

	static TreeViewer in(Composite parent) {
		TreeViewer viewer = new TreeViewer(parent, SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Branches<>(FormNode.class, FormNode::children) {
			@Override
			public Object getParent(Object node) {
				return ((FormNode) node).page() instanceof FormNode.OfKind of && of.item().isPresent()
						? new FormNode(new FormNode.OfKind(of.kind(), Optional.empty()), FormNode.Sign.KNOWN, "", "", List.of()) //$NON-NLS-1$ //$NON-NLS-2$
						: null;
			}
		});
		viewer.setComparer(new SameBy<>(FormNode.class, FormNode::page));
		viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(new Lines()));
		return viewer;
	}

	/** @return the line of {@code viewer} that opens {@code page}, or empty */
	static Optional<FormNode> node(TreeViewer viewer, Page page) {
		List<?> nodes = (List<?>) viewer.getInput();
		return nodes.stream().map(FormNode.class::cast).flatMap(n -> Stream.concat(Stream.of(n), n.children().stream()))
				.filter(n -> n.page().equals(page)).findFirst();
	}

	/** Sign, text and remark of each line. */
	private static final class Lines extends LabelProvider implements DelegatingStyledCellLabelProvider.IStyledLabelProvider {
		@Override
		public StyledString getStyledText(Object node) {
			return Written.line(((FormNode) node).text(), ((FormNode) node).remark());
		}

		@Override
		public Image getImage(Object node) {
			return Icon.of(((FormNode) node).sign()).image();
		}
	}
}
