package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.IElementComparer;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.setwright.workbench.jobform.FormNode.Page;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Written;

/** Shows the outline of a form. */
final class FormOutlineViewer {
	private FormOutlineViewer() {
	}

	static TreeViewer in(Composite parent) {
		TreeViewer viewer = new TreeViewer(parent, SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Nodes());
		viewer.setComparer(new SamePage());
		viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(new Lines()));
		return viewer;
	}

	/** @return the line of {@code viewer} that opens {@code page}, or empty */
	static Optional<FormNode> node(TreeViewer viewer, Page page) {
		List<?> nodes = (List<?>) viewer.getInput();
		return nodes.stream().map(FormNode.class::cast).flatMap(n -> Stream.concat(Stream.of(n), n.children().stream()))
				.filter(n -> n.page().equals(page)).findFirst();
	}

	/** Kinds over single facts. */
	private static final class Nodes implements ITreeContentProvider {
		@Override
		public Object[] getElements(Object input) {
			return ((List<?>) input).toArray();
		}

		@Override
		public Object[] getChildren(Object node) {
			return ((FormNode) node).children().toArray();
		}

		@Override
		public Object getParent(Object node) {
			return ((FormNode) node).page() instanceof FormNode.OfKind of && of.item().isPresent()
					? new FormNode(new FormNode.OfKind(of.kind(), Optional.empty()), FormNode.Sign.KNOWN, "", "", List.of()) //$NON-NLS-1$ //$NON-NLS-2$
					: null;
		}

		@Override
		public boolean hasChildren(Object node) {
			return !((FormNode) node).children().isEmpty();
		}
	}

	/** Two lines are the same when they open the same page, so that a selection outlives an edit. */
	private static final class SamePage implements IElementComparer {
		@Override
		public boolean equals(Object a, Object b) {
			return key(a).equals(key(b));
		}

		@Override
		public int hashCode(Object element) {
			return key(element).hashCode();
		}

		private static Object key(Object element) {
			return element instanceof FormNode node ? node.page() : element;
		}
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
