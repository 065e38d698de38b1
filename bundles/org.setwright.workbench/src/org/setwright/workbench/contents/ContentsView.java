package org.setwright.workbench.contents;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Written;
import org.setwright.workbench.rows.Branches;
import org.setwright.workbench.rows.SameBy;

/** What is in the rule book? Its files and rules, each opened by a double click or Enter. */
public final class ContentsView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.contents"; //$NON-NLS-1$
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private Text search;
	private TreeViewer tree;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(4, 4).spacing(0, 4).applyTo(parent);
		search = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage(Messages.ContentsView_search);
		Spoken.as(search, Messages.ContentsView_search);
		search.addListener(SWT.Modify, e -> narrow());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		tree = tree(parent);
		Repaint.with(tree.getControl(), tree::refresh);
		desk.addListener(listener);
		deskChanged(DeskState.EMPTY, desk.state());
	}

	private TreeViewer tree(Composite parent) {
		TreeViewer viewer = new TreeViewer(parent, SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		viewer.setContentProvider(new Branches<>(BookNode.class, BookNode::children));
		viewer.setLabelProvider(new DelegatingStyledCellLabelProvider(new Lines()));
		viewer.setComparer(new SameBy<>(BookNode.class, ContentsView::place));
		viewer.addFilter(new ViewerFilter() {
			@Override
			public boolean select(Viewer shown, Object parentElement, Object element) {
				return ((BookNode) element).matches(search.getText());
			}
		});
		viewer.addOpenListener(e -> Places.open(getSite().getPage(), ((BookNode) viewer.getStructuredSelection().getFirstElement()).at()));
		Spoken.as(viewer.getControl(), Messages.ContentsView_tree);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(viewer.getControl());
		return viewer;
	}

	/** A file is the same by its path, a rule by its name in its file. */
	private static String place(BookNode node) {
		return node.at().file() + '\n' + (node.at().line() == 0 ? "" : node.text()); //$NON-NLS-1$
	}

	private void narrow() {
		tree.refresh();
		if (!search.getText().isBlank()) {
			tree.expandAll();
		}
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || tree.getInput() == null) {
			Object[] expanded = tree.getExpandedElements();
			tree.setInput(now.latest().map(BookTree::of).orElse(List.of()));
			tree.setExpandedElements(expanded);
		}
	}

	@Override
	public void setFocus() {
		tree.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}

	/** Sign, text and remark of each line. */
	private static final class Lines extends LabelProvider implements DelegatingStyledCellLabelProvider.IStyledLabelProvider {
		@Override
		public StyledString getStyledText(Object node) {
			return Written.line(((BookNode) node).text(), ((BookNode) node).remark());
		}

		@Override
		public Image getImage(Object node) {
			return Icon.of(((BookNode) node).sign()).image();
		}
	}
}
