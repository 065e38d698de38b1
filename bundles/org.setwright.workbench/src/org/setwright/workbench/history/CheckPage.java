package org.setwright.workbench.history;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.setwright.book.history.HistoryResult;
import org.setwright.book.history.Mapping;

/** Whether every row can be read, and what is wrong with those that cannot. */
final class CheckPage extends WizardPage {
	private final ImportPlan plan;
	private FaultTable faults;
	private Button again;
	private Optional<HistoryResult> result = Optional.empty();
	private Object checked;

	/** What was checked: another file, folder or mapping has to be checked anew. */
	private record Checked(Object preview, Mapping mapping, java.nio.file.Path jobs) {
	}

	CheckPage(ImportPlan plan) {
		super("check", Messages.CheckPage_title, null); //$NON-NLS-1$
		this.plan = plan;
		setPageComplete(false);
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().applyTo(area);
		faults = new FaultTable(area);
		GridDataFactory.fillDefaults().grab(true, true).hint(SWT.DEFAULT, FaultTable.HEIGHT).applyTo(faults.control());
		again = new Button(area, SWT.PUSH);
		again.setText(Messages.CheckPage_again);
		again.addListener(SWT.Selection, e -> check());
		setControl(area);
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible && !now().equals(checked)) {
			checked = null;
			forget();
			getShell().getDisplay().asyncExec(() -> {
				if (!again.isDisposed() && isCurrentPage()) {
					check();
				}
			});
		}
	}

	private Checked now() {
		return new Checked(plan.preview(), plan.mapping(), plan.jobs());
	}

	/** Reads every row, with progress, beside the window. */
	private void check() {
		forget();
		Checked what = now();
		HistoryWork.beside(this, plan::check, Messages.CheckPage_failed).ifPresent(r -> {
			checked = r.cancelled() ? null : what;
			show(r);
		});
	}

	private void forget() {
		result = Optional.empty();
		setMessage(Messages.CheckPage_message);
		faults.show(java.util.List.of());
		setPageComplete(false);
	}

	/** Shows what came of reading the rows. */
	void show(HistoryResult came) {
		result = Optional.of(came);
		faults.show(came.faults());
		int all = came.faults().size() + came.more();
		if (came.cancelled()) {
			setMessage(NLS.bind(Messages.CheckPage_ended, came.jobs()), WARNING);
		} else if (all == 0) {
			setMessage(NLS.bind(Messages.CheckPage_fine, came.jobs(), plan.jobs()), INFORMATION);
		} else {
			setMessage(came.more() > 0 ? NLS.bind(Messages.CheckPage_manyFaults, all, came.faults().size()) : NLS.bind(Messages.CheckPage_faults, all), ERROR);
		}
		setPageComplete(sound());
	}

	/** @return whether every row can be read as it stands now */
	boolean sound() {
		return result.filter(r -> !r.cancelled() && r.faults().isEmpty()).isPresent() && now().equals(checked);
	}
}
