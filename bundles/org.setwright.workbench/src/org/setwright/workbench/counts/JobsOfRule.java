package org.setwright.workbench.counts;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.PopupDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchWindow;
import org.setwright.book.JobCase;
import org.setwright.engine.Standing;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.folder.Places;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.look.Type;
import org.setwright.writing.live.RuleTally;

/** A list of the jobs of a rule by what becomes of it on them. Picking one shows it in the other views; Enter opens it. */
public final class JobsOfRule extends PopupDialog {
	private static final int LETTERS = 70;
	private static final int LINES = 18;
	private final IWorkbenchWindow window;
	private final RuleTally tally;
	private Tree tree;

	private JobsOfRule(IWorkbenchWindow window, String rule, RuleTally tally) {
		super(window.getShell(), SWT.RESIZE, true, true, false, false, false, rule, Messages.JobsOfRule_hint);
		this.window = window;
		this.tally = tally;
	}

	/** Opens the list for the rule called {@code rule}. @return its shell; empty when the rule has not been counted */
	public static Optional<Shell> show(IWorkbenchWindow window, String rule) {
		Desk desk = window.getService(Desk.class);
		desk.pickRule(rule);
		return desk.tally().of(rule).map(tally -> {
			JobsOfRule list = new JobsOfRule(window, rule, tally);
			list.open();
			return list.getShell();
		});
	}

	@Override
	protected Control createDialogArea(Composite parent) {
		tree = new Tree(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
		Spoken.as(tree, Messages.JobsOfRule_name);
		for (Standing standing : Standing.values()) {
			List<String> paths = tally.jobs().get(standing);
			if (!paths.isEmpty()) {
				group(standing, paths);
			}
		}
		tree.addListener(SWT.Selection, this::pick);
		tree.addListener(SWT.DefaultSelection, this::open);
		return tree;
	}

	private void group(Standing standing, List<String> paths) {
		TreeItem group = new TreeItem(tree, SWT.NONE);
		group.setText(TallyWords.heading(standing, paths.size()));
		for (String path : paths) {
			TreeItem job = new TreeItem(group, SWT.NONE);
			job.setText(desk().state().latest().flatMap(e -> e.job(path)).map(JobCase::name).orElse(path));
			job.setData(path);
		}
		group.setExpanded(standing != Standing.SILENT);
	}

	private void pick(Event event) {
		if (event.item != null && event.item.getData() instanceof String path) {
			desk().pickJob(path);
		}
	}

	private void open(Event event) {
		if (event.item instanceof TreeItem item && item.getData() instanceof String path) {
			desk().pickJob(path);
			close();
			Places.openJob(window.getActivePage(), path);
		} else if (event.item instanceof TreeItem item) {
			item.setExpanded(!item.getExpanded());
		}
	}

	private Desk desk() {
		return window.getService(Desk.class);
	}

	@Override
	protected Control getFocusControl() {
		return tree;
	}

	@Override
	protected Point getDefaultSize() {
		return Type.room(getParentShell(), LETTERS, LINES);
	}
}
