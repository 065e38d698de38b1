package org.setwright.workbench.reasons;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.desk.DeskListener;
import org.setwright.workbench.desk.DeskState;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Repaint;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.reasons.ReasonNode.InJob;
import org.setwright.workbench.reasons.ReasonNode.InRules;

/** Why this value? The outline leads from the setting to its rules, and from them to the answers of the job. */
public final class ReasonsView extends ViewPart {
	/** Its name in the registry. */
	public static final String ID = "org.setwright.workbench.reasons"; //$NON-NLS-1$
	private static final int[] SHARES = { 72, 28 };
	private static final int LEVELS = 4;
	private final DeskListener listener = this::deskChanged;
	private Desk desk;
	private TreeViewer outline;
	private Text detail;

	@Override
	public void createPartControl(Composite parent) {
		desk = getSite().getService(Desk.class);
		GridLayoutFactory.fillDefaults().margins(6, 6).applyTo(parent);
		SashForm sash = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		outline = new TreeViewer(sash, SWT.V_SCROLL | SWT.H_SCROLL | SWT.BORDER);
		outline.setContentProvider(new ReasonContents());
		outline.setLabelProvider(new ReasonLabels());
		outline.addPostSelectionChangedListener(e -> detail.setText(picked().map(ReasonNode::detail).orElse(""))); //$NON-NLS-1$
		outline.addOpenListener(e -> picked().flatMap(ReasonNode::place).ifPresent(this::open));
		Spoken.as(outline.getControl(), Messages.ReasonsView_outline);
		detail = new Text(sash, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		Spoken.as(detail, Messages.ReasonsView_detail);
		sash.setWeights(SHARES);
		getSite().setSelectionProvider(outline);
		Repaint.with(outline.getControl(), outline::refresh);
		desk.addListener(listener);
		show(desk.state());
	}

	private void deskChanged(DeskState before, DeskState now) {
		if (before.latest() != now.latest() || !before.job().equals(now.job()) || !before.setting().equals(now.setting())) {
			show(now);
		}
	}

	private void show(DeskState now) {
		Optional<ReasonNode> root = now.settingOutcome().flatMap(s -> now.outcome().map(o -> ReasonTree.of(s, o.job())));
		outline.setInput(root.stream().toList());
		outline.expandToLevel(LEVELS);
		root.ifPresent(r -> outline.setSelection(new StructuredSelection(first(r)), true));
		if (outline.getTree().getItemCount() > 0) {
			outline.getTree().setTopItem(outline.getTree().getItem(0));
		}
		detail.setText(root.isEmpty() ? why(now) : picked().map(ReasonNode::detail).orElse("")); //$NON-NLS-1$
	}

	/** What is read first: the rule that decides, or why nothing is decided. */
	private static ReasonNode first(ReasonNode root) {
		return root.sign() == ReasonNode.Sign.SETTLED ? root.children().get(0) : root;
	}

	private static String why(DeskState now) {
		if (now.outcome().isEmpty()) {
			return Messages.ReasonsView_noSetup;
		}
		return now.setting().isEmpty() ? Messages.ReasonsView_pickSetting : Messages.ReasonsView_notNeeded;
	}

	private Optional<ReasonNode> picked() {
		return Optional.ofNullable((ReasonNode) outline.getStructuredSelection().getFirstElement());
	}

	private void open(ReasonNode.Place place) {
		if (place instanceof InRules rules) {
			Places.open(getSite().getPage(), rules.at());
		} else if (place instanceof InJob job) {
			desk.state().job().ifPresent(path -> Places.openJob(getSite().getPage(), path, job.field()));
		}
	}

	@Override
	public void setFocus() {
		outline.getControl().setFocus();
	}

	@Override
	public void dispose() {
		desk.removeListener(listener);
		super.dispose();
	}
}
