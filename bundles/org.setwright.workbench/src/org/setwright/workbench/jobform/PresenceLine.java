package org.setwright.workbench.jobform;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.setwright.book.JobCase;
import org.setwright.book.JobEdit;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.catalogue.JobField;
import org.setwright.workbench.look.Spoken;
import org.setwright.writing.uses.Thing;

/** Asks whether there is any fact of a kind: not known, none, or there. */
final class PresenceLine {
	private static final List<Presence> ORDER = List.of(Presence.UNKNOWN, Presence.NONE, Presence.PRESENT);
	private final FactKind kind;
	private final Combo combo;

	PresenceLine(Composite grid, FactKind kind, FormDesk desk) {
		this.kind = kind;
		Label question = FormGrid.ask(grid, kind.many() ? Messages.PresenceLine_any : Messages.PresenceLine_one, kind.meaning());
		combo = new Combo(grid, SWT.READ_ONLY | SWT.DROP_DOWN);
		combo.setItems(Messages.PresenceLine_unknown, Messages.PresenceLine_none, Messages.PresenceLine_present);
		combo.addListener(SWT.MouseVerticalWheel, e -> e.doit = false);
		combo.addListener(SWT.Selection, e -> desk.edit(new JobEdit.Fitted(kind, ORDER.get(combo.getSelectionIndex()))));
		combo.addListener(SWT.FocusIn, e -> desk.say(Messages.PresenceLine_help, false));
		desk.about(question, combo, () -> new Thing.OfKind(kind));
		Spoken.as(combo, JobField.presence(kind).label());
		FormGrid.field(combo);
		FormGrid.remark(grid, ""); //$NON-NLS-1$
	}

	void show(JobCase job) {
		combo.select(ORDER.indexOf(job.job().entry(kind).presence()));
	}

	void focus() {
		combo.setFocus();
	}
}
