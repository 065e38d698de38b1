package org.setwright.workbench.jobform;

import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.setwright.book.JobCase;
import org.setwright.trade.catalogue.FactKind;
import org.setwright.trade.catalogue.Job.Presence;
import org.setwright.trade.catalogue.JobField;

/** A kind of fact of which a job has at most one: whether there is one, and the questions about it. */
final class KindPage implements FormPage {
	private final FactKind kind;
	private final Optional<PresenceLine> presence;
	private final FactPage questions;

	KindPage(Composite parent, FactKind kind, FormDesk desk) {
		this.kind = kind;
		Composite grid = FormGrid.in(parent);
		presence = kind.always() ? Optional.empty() : Optional.of(new PresenceLine(grid, kind, desk));
		questions = new FactPage(grid, kind, 0, desk);
	}

	@Override
	public void show(JobCase job) {
		presence.ifPresent(p -> p.show(job));
		questions.show(job);
		questions.enable(job.job().entry(kind).presence() != Presence.NONE);
	}

	@Override
	public void focus(JobField field) {
		if (field.field().isPresent()) {
			questions.focus(field);
		} else {
			presence.ifPresent(PresenceLine::focus);
		}
	}
}
