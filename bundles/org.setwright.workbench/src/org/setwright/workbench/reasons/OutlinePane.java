package org.setwright.workbench.reasons;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.Branches;

/** An outline of reasons; below it everything about the line picked. Enter or a double click goes to its place. */
final class OutlinePane {
	private static final int[] SHARES = { 72, 28 };
	private static final int LEVELS = 4;
	private final SashForm sash;
	private final TreeViewer outline;
	private final Text detail;
	private List<ReasonNode> roots = List.of();

	/** @param name what a screen reader calls the outline @param opened told which place somebody wants to see */
	OutlinePane(Composite parent, String name, Consumer<ReasonNode.Place> opened) {
		sash = new SashForm(parent, SWT.VERTICAL);
		outline = new TreeViewer(sash, SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		outline.setContentProvider(new Branches<>(ReasonNode.class, ReasonNode::children));
		outline.setLabelProvider(new ReasonLabels());
		ColumnViewerToolTipSupport.enableFor(outline);
		outline.addPostSelectionChangedListener(e -> detail(picked().map(OutlinePane::about).orElse(""))); //$NON-NLS-1$
		outline.addOpenListener(e -> picked().flatMap(ReasonNode::place).ifPresent(opened));
		Spoken.as(outline.getControl(), name);
		detail = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Spoken.as(detail, Messages.ReasonsView_detail);
		sash.setWeights(SHARES);
		Repaint.with(outline.getControl(), outline::refresh);
	}

	Control control() {
		return sash;
	}

	TreeViewer viewer() {
		return outline;
	}

	/** @param shown the outline @param first the line to be read first @param otherwise what is said when there is no outline */
	void show(List<ReasonNode> shown, Optional<ReasonNode> first, String otherwise) {
		roots = shown;
		outline.setInput(shown);
		outline.expandToLevel(LEVELS);
		first.ifPresent(f -> outline.setSelection(new StructuredSelection(f), true));
		if (outline.getTree().getItemCount() > 0) {
			outline.getTree().setTopItem(outline.getTree().getItem(0));
		}
		detail(shown.isEmpty() ? otherwise : picked().map(OutlinePane::about).orElse("")); //$NON-NLS-1$
	}

	/** @return the outline as indented text */
	String text() {
		StringBuilder text = new StringBuilder();
		roots.forEach(r -> write(r, 0, text));
		return text.toString();
	}

	private static void write(ReasonNode node, int depth, StringBuilder into) {
		into.append("  ".repeat(depth)).append(node.text()).append(node.remark().isEmpty() ? "" : "   (" + node.remark() + ")") //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
				.append(System.lineSeparator());
		node.children().forEach(c -> write(c, depth + 1, into));
	}

	/** The line itself comes first: in a narrow view it is cut off. */
	private static String about(ReasonNode node) {
		return node.detail().startsWith(node.text()) ? node.detail() : node.detail().isEmpty() ? node.text() : node.text() + "\n" + node.detail(); //$NON-NLS-1$
	}

	private void detail(String words) {
		detail.setText(words);
	}

	private Optional<ReasonNode> picked() {
		return Optional.ofNullable((ReasonNode) outline.getStructuredSelection().getFirstElement());
	}
}
