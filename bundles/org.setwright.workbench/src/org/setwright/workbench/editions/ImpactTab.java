package org.setwright.workbench.editions;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.ProgressBar;
import org.setwright.check.Progress;
import org.setwright.editions.impact.Impact;
import org.setwright.editions.kept.NotDone;
import org.setwright.workbench.desk.Desk;
import org.setwright.workbench.look.Spoken;
import org.setwright.workbench.rows.RowTree;

/** What the changes mean for the saved jobs. They are run while this is to be seen, and the run can be stopped. */
final class ImpactTab {
	private final Desk desk;
	private final OpenEditions open;
	private final ListPane pane;
	private final WhenSeen seen;
	private final Button run;
	private final Button stop;
	private final ProgressBar bar;
	private final Asking<Impact> running = new Asking<>(Messages.ImpactTab_name, this::told, this::refused);
	private Optional<Compared> about = Optional.empty();

	ImpactTab(CTabFolder tabs, Desk desk, OpenEditions open) {
		this.desk = desk;
		this.open = open;
		pane = new ListPane(tabs, Messages.ImpactTab_list, ImpactRows.COLUMNS);
		run = pane.button(Messages.ImpactTab_run, this::run);
		stop = pane.button(Messages.ImpactTab_stop, this::stop);
		bar = new ProgressBar(pane.buttons(), SWT.SMOOTH);
		Spoken.as(bar, Messages.ImpactTab_bar);
		seen = new WhenSeen(tabs, Messages.ImpactTab_title, pane.control(), this::run);
		pane.tree().onPick(spot -> spot.ifPresent(this::picked), this::picked);
		pane.control().addDisposeListener(e -> running.drop());
		none();
	}

	RowTree tree() {
		return pane.tree();
	}

	/** Takes note of what is compared now. */
	void show(Compared now) {
		about = Optional.of(now);
		running.drop();
		pane.show(now.sides().title(), List.of());
		busy(false);
		seen.due();
	}

	/** Nothing is compared. */
	void none() {
		about = Optional.empty();
		running.drop();
		seen.notDue();
		pane.show(Messages.ImpactTab_none, List.of());
		busy(false);
	}

	private void run() {
		desk.state().folder().ifPresent(folder -> about.ifPresent(compared -> {
			busy(true);
			bar.setSelection(0);
			pane.say(compared.sides().title() + " " + Messages.ImpactTab_running); //$NON-NLS-1$
			running.ask(m -> open.demand(folder).impact(compared.changes(), watched(m, compared)));
		}));
	}

	private void stop() {
		running.drop();
		busy(false);
		pane.say(Messages.ImpactTab_stopped);
	}

	private void told(Impact impact) {
		busy(false);
		String title = about.map(a -> a.sides().title() + " ").orElse(""); //$NON-NLS-1$ //$NON-NLS-2$
		String summary = impact.fault().isEmpty() ? NLS.bind(Messages.ImpactTab_summary, impact.run(), impact.jobs().size()) : impact.fault();
		pane.show(title + summary, ImpactRows.of(impact));
	}

	private void refused(NotDone no) {
		if (!pane.control().isDisposed()) {
			busy(false);
			pane.show(no.getMessage(), List.of());
		}
	}

	private void busy(boolean busy) {
		run.setEnabled(!busy && about.isPresent());
		stop.setEnabled(busy);
		bar.setVisible(busy);
	}

	private void picked(Object spot) {
		ImpactRows.Spot to = (ImpactRows.Spot) spot;
		desk.state().latest().flatMap(e -> e.job(to.job())).ifPresent(j -> desk.pickJob(j.path()));
		to.setting().ifPresent(desk::pickSetting);
	}

	private Progress watched(IProgressMonitor monitor, Compared compared) {
		return new Progress() {
			@Override
			public void done(int done, int all) {
				Display.getDefault().asyncExec(() -> {
					if (!bar.isDisposed() && about.filter(a -> a == compared).isPresent()) {
						bar.setMaximum(Math.max(1, all));
						bar.setSelection(done);
					}
				});
			}

			@Override
			public boolean cancelled() {
				return monitor.isCanceled();
			}
		};
	}
}
