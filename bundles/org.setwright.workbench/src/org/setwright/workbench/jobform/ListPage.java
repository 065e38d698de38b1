package org.setwright.workbench.jobform;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.Fact;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.jobform.FormNode.OfKind;
import org.setwright.workbench.look.Icon;

/** A kind of fact of which a job may have several: each with a way to it and a way to take it out, and one more. */
final class ListPage implements FormPage {
	private final FactKind kind;
	private final FormDesk desk;
	private final Optional<PresenceLine> presence;
	private final Composite items;
	private List<Fact> shown = List.of();

	ListPage(Composite parent, FactKind kind, FormDesk desk) {
		this.kind = kind;
		this.desk = desk;
		presence = kind.always() ? Optional.empty() : Optional.of(new PresenceLine(FormGrid.in(parent), kind, desk));
		items = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(16, 4).applyTo(items);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(items);
		Button add = new Button(parent, SWT.PUSH);
		add.setText(NLS.bind(Messages.ListPage_add, kind.label()));
		add.setImage(Icon.ADD.image());
		add.addListener(SWT.Selection, e -> {
			int next = shown.size();
			desk.edit(new JobEdit.Added(kind));
			desk.open(new OfKind(kind, Optional.of(next)));
		});
	}

	@Override
	public void show(JobCase job) {
		presence.ifPresent(p -> p.show(job));
		List<Fact> facts = job.job().entry(kind).facts();
		if (!facts.equals(shown) || items.getChildren().length == 0) {
			shown = facts;
			for (Control old : items.getChildren()) {
				old.dispose();
			}
			for (int i = 0; i < facts.size(); i++) {
				line(i, facts.get(i), facts.size() > 1);
			}
			if (facts.isEmpty()) {
				new Label(items, SWT.NONE).setText(NLS.bind(Messages.ListPage_empty, kind.key()));
			}
			items.requestLayout();
		}
	}

	private void line(int item, Fact fact, boolean removable) {
		Link open = new Link(items, SWT.NONE);
		open.setText("<a>" + FormOutline.title(kind, item, fact).replace("<", "\u2039") + "</a>"); //$NON-NLS-1$ //$NON-NLS-2$ //$NON-NLS-3$ //$NON-NLS-4$
		open.addListener(SWT.Selection, e -> desk.open(new OfKind(kind, Optional.of(item))));
		GridDataFactory.swtDefaults().minSize(220, SWT.DEFAULT).hint(220, SWT.DEFAULT).applyTo(open);
		Button remove = new Button(items, SWT.PUSH | SWT.FLAT);
		remove.setImage(Icon.REMOVE.image());
		remove.setText(Messages.ListPage_remove);
		remove.setToolTipText(removable ? NLS.bind(Messages.ListPage_removeOne, FormOutline.title(kind, item, fact))
				: Messages.ListPage_lastStays);
		remove.setEnabled(removable);
		remove.addListener(SWT.Selection, e -> desk.edit(new JobEdit.Removed(kind, item)));
	}

	@Override
	public void focus(JobField field) {
		presence.ifPresent(PresenceLine::focus);
	}
}
