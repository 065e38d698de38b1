package org.setwright.workbench.editions;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.setwright.editions.joining.Conflict;
import org.setwright.editions.joining.JoinPlan;
import org.setwright.workbench.look.Icon;
import org.setwright.workbench.rows.Row;
import org.setwright.workbench.rows.RowTree;
import org.setwright.workbench.rows.RowTree.Manner;

/** Shows what two lines changed each in its own way, rule by rule, and has a person decide which of the two holds. */
final class JoinDialog extends EntryDialog {
	private static final int HEIGHT = 150;
	private static final List<RowTree.Column> COLUMNS = List.of(new RowTree.Column(Messages.JoinDialog_what, 50),
			new RowTree.Column(Messages.JoinDialog_where, 25), new RowTree.Column(Messages.JoinDialog_decided, 25));
	private final JoinPlan plan;
	private final Map<Conflict, Optional<String>> decided = new LinkedHashMap<>();
	private RowTree tree;

	JoinDialog(Shell shell, JoinPlan plan, Author author) {
		super(shell, new Entry(Messages.LineActs_join, LineRows.summary(plan.conflicts(), plan.changing().size()), Messages.JoinDialog_join,
				"", List.of(), Messages.Acts_message, NLS.bind(Messages.JoinDialog_message, plan.name()), true, author)); //$NON-NLS-1$
		this.plan = plan;
	}

	/** @return the text that holds for every conflict, empty to leave it out; not before the dialog was answered */
	Map<Conflict, Optional<String>> decided() {
		return decided;
	}

	@Override
	protected void more(Composite area) {
		if (plan.conflicts().isEmpty()) {
			return;
		}
		tree = new RowTree(area, Messages.JoinDialog_list, COLUMNS, Manner.READ);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(tree.control());
		Composite row = new Composite(area, SWT.NONE);
		row.setLayout(new RowLayout());
		GridDataFactory.fillDefaults().span(2, 1).applyTo(row);
		button(row, Messages.JoinDialog_ours, true);
		button(row, Messages.JoinDialog_theirs, false);
		SidePane side = new SidePane(area, Messages.JoinDialog_here, NLS.bind(Messages.JoinDialog_there, plan.name()));
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(SWT.DEFAULT, HEIGHT).applyTo(side.control());
		tree.onPick(about -> picked().ifPresent(c -> side.show(c.ours().orElse(""), c.theirs().orElse(""))), about -> { //$NON-NLS-1$ //$NON-NLS-2$
			// both sides are shown already
		});
		show();
	}

	private void button(Composite row, String label, boolean ours) {
		Button button = new Button(row, SWT.PUSH);
		button.setText(label);
		button.addListener(SWT.Selection, e -> picked().ifPresent(c -> {
			decided.put(c, ours ? c.ours() : c.theirs());
			show();
			enable();
		}));
	}

	private Optional<Conflict> picked() {
		return tree.picked().map(Conflict.class::cast);
	}

	private void show() {
		Optional<Conflict> picked = picked();
		tree.show(plan.conflicts().stream().map(this::row).toList());
		tree.pick(picked.map(Object.class::cast).orElse(plan.conflicts().get(0)));
	}

	private Row row(Conflict conflict) {
		Optional<String> text = decided.get(conflict);
		boolean open = text == null;
		String words = open ? Messages.JoinDialog_undecided
				: text.equals(conflict.ours()) ? Messages.JoinDialog_here : NLS.bind(Messages.JoinDialog_there, plan.name());
		return new Row(open ? Icon.DISPUTED : Icon.SETTLED, List.of(conflict.what(), conflict.path(), words), conflict);
	}

	@Override
	protected boolean complete() {
		return decided.keySet().containsAll(plan.conflicts());
	}
}
